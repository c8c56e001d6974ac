using Slowglow.Diagnosis;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>What the next reading will ask for is solved while it is being taken.</summary>
public sealed class ForeseeTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void A_reading_that_was_foreseen_asks_for_no_further_single_fault()
    {
        var (surprised, foreseen) = (Asked(foresee: false), Asked(foresee: true));

        Assert.True(surprised > 100, $"only {surprised} worlds were asked for");
        Assert.Equal(0, foreseen);
    }

    [Fact]
    public void What_was_foreseen_changes_no_answer()
    {
        var unit = DemoUnits.Of("saltmarsh-lm2");
        var (plain, ahead) = (new Diagnostician(unit.Worlds), new Diagnostician(unit.Worlds));
        var reading = Taken(plain.Diagnose(Silent(), cancel: Cancel));
        ahead.Foresee(ahead.Diagnose(Silent(), cancel: Cancel).Next, Cancel);

        Assert.Equal(
            plain.Diagnose(Silent(reading), cancel: Cancel).Suspects.Select(s => (s.Words, s.Probability)),
            ahead.Diagnose(Silent(reading), cancel: Cancel).Suspects.Select(s => (s.Words, s.Probability))
        );
    }

    [Fact]
    public void Nothing_proposed_is_nothing_to_foresee() =>
        new Diagnostician(DemoUnits.Of("saltmarsh-lm2").Worlds).Foresee([], Cancel);

    private static int Asked(bool foresee)
    {
        var source = new CountedSource(new WorldSource(DemoUnits.Of("saltmarsh-lm2").Worlds));
        var diagnostician = new Diagnostician(source);
        var before = diagnostician.Diagnose(Silent(), cancel: Cancel);
        if (foresee)
        {
            diagnostician.Foresee(before.Next, Cancel);
        }

        source.Counted = before.Next[0].Setup;
        diagnostician.Diagnose(Silent(Taken(before)), cancel: Cancel);
        return source.Singles;
    }

    /// <summary>Nothing at the first point proposed: as a silent unit may well read there.</summary>
    private static Reading Taken(DiagnosisResult before) =>
        new(before.Next[0].Probe, before.Next[0].Setup, MeterSaid.Value, 0, MeterClass.Handheld, "nothing", Place.None);

    private static Evidence Silent(params Reading[] readings) => new("silent", [Setup.Default, Setup.Cold], readings);
}
