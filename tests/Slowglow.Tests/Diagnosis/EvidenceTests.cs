using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>Evidence beside plain figures, in a network that is worked by hand; and evidence that cannot be.</summary>
public sealed class EvidenceTests
{
    private readonly TwoDividers network = new();
    private readonly Diagnostician diagnostician;

    public EvidenceTests() => diagnostician = new(network);

    [Fact]
    public void A_bound_moves_suspects_as_the_figure_would()
    {
        var bound = Diagnose(Said("A", MeterSaid.Above, 90), Dc("HT", 100));

        Assert.True(bound.Suspects.Where(s => s.Part is "R1" or "R2").Sum(s => s.Probability) > 0.85, bound.Summary);
        Assert.Equal(FailureMode.Open, bound.Suspects.First(s => s.Part == "R2").Fault.Mode);
        Assert.Equal("far too high", bound.Readings[0].Word);

        var low = Diagnose(Said("A", MeterSaid.Below, 60), Dc("HT", 100));
        Assert.Equal("as expected", low.Readings[0].Word);
        Assert.True(low.Suspects.First(s => s.Part == "R1").Probability < 0.3, low.Summary);
    }

    [Fact]
    public void A_burnt_part_is_one_that_a_fault_overloads_or_that_failed_itself()
    {
        // R8 carries 10 A when R9 is shorted: 1 kW in a 2 W part.
        var result = Diagnose(Seen("R8", Look.Burnt));
        var without = Diagnose();

        double Of(DiagnosisResult r, string part) => r.Suspects.Where(s => s.Group.Contains(part)).Sum(s => s.Probability);
        Assert.True(Of(result, "R8") + Of(result, "R9") > 0.6, result.Summary);
        Assert.True(Of(without, "R8") + Of(without, "R9") < 0.3, without.Summary);
        Assert.Contains(
            result.Suspects.First(s => s.Part == "R9").Explains,
            e => e.Contains("R8 burnt", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_mistake_counts_no_more_and_is_still_listed()
    {
        var wrong = Dc("A", 12) with { IsMistake = true };

        var result = Diagnose(wrong, Dc("HT", 100), Dc("B", 50));

        Assert.True(result.Suspects.First(s => s.Part == "R1").Probability < 0.4, result.Summary);
        Assert.Equal("called a mistake", result.Readings[0].Word);
    }

    [Fact]
    public void An_unsteady_point_speaks_for_no_figure_but_is_no_healthy_unit()
    {
        var result = Diagnose(Said("A", MeterSaid.Unstable, double.NaN));

        Assert.True(result.Healthy < Diagnose().Healthy, result.Summary);
        Assert.Equal("does not belong", result.Readings[0].Word);
    }

    [Fact]
    public void Two_readings_of_one_point_that_disagree_are_met_by_a_sentence()
    {
        var result = Diagnose(Dc("A", 50), Dc("HT", 100), Dc("A", 12));

        Assert.Contains("A dc was read as 50 V and as 12 V", Assert.Single(result.Doubts));
        Assert.StartsWith(result.Doubts[0], result.Summary);
        Assert.True(result.NoneOfThese >= 0.5 - 1e-9, result.Summary);
        Assert.Equal(2, result.Readings.Count(r => r.Word == "in doubt, not weighed"));
        Assert.Equal(1, result.Suspects.Sum(s => s.Probability) + result.Healthy + result.NoneOfThese, 9);
    }

    [Fact]
    public void Two_readings_that_agree_within_the_meters_are_no_contradiction() =>
        Assert.Empty(Diagnose(Dc("A", 50), Dc("A", 50.9)).Doubts);

    [Fact]
    public void A_part_cannot_be_hot_and_cool()
    {
        var doubt = Assert.Single(Diagnose(Seen("R1", Look.Hot), Seen("R1", Look.Cool)).Doubts);

        Assert.Contains("R1 was found hot and cool", doubt);
    }

    private DiagnosisResult Diagnose(params Reading[] readings) =>
        diagnostician.Diagnose(new Evidence(null, [Setup.Default, Setup.Cold], readings));

    private static Reading Dc(string net, double volts) => Said(net, MeterSaid.Value, volts);

    private static Reading Said(string net, MeterSaid said, double value) =>
        new(TwoDividers.Dc(net), Setup.Default, said, value, MeterClass.Handheld, "", Place.None);

    private static Reading Seen(string part, Look look) =>
        new(
            new(part, "HT", NetTable.Ground, ProbeKind.Look),
            Setup.Default,
            MeterSaid.Look,
            double.NaN,
            MeterClass.Handheld,
            "",
            Place.None
        )
        {
            Look = look,
        };
}
