using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>The sentences of a whole case: from the part to the sound, why the other channel works, what ruled out what.</summary>
public sealed class ExplanationTests
{
    private static readonly Lazy<DiagnosisResult> Combo = new(() => Demo("kittiwake-15"));
    private static readonly Lazy<DiagnosisResult> Monitor = new(() => Demo("heronsgate-m60"));

    [Fact]
    public void The_chain_leads_from_the_part_to_the_sound()
    {
        var explains = Combo.Value.Suspects[0].Explains;

        Assert.Equal("R10", Combo.Value.Suspects[0].Part);
        Assert.Contains("V1.6 falls to", explains[0]);
        Assert.Contains(explains, e => e.StartsWith("Channel first ends", StringComparison.Ordinal));
        Assert.Contains(
            explains,
            e => e.StartsWith("Channel second still works: its signal does not pass R10", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Each_reading_says_what_it_ruled_out()
    {
        var sentence = Assert.Single(
            Combo.Value.RuledOut,
            r => r.StartsWith("V1.6 = 33.1 V rules out", StringComparison.Ordinal)
        );

        Assert.DoesNotContain("R10,", sentence);
        Assert.Matches(@"\(\d+ of \d+ parts\)", sentence);
    }

    [Fact]
    public void The_lead_is_proved_by_the_value_on_the_drawing() =>
        Assert.Contains("a good one shows 90 kohm to 110 kohm, this one would show about 800 kohm", Combo.Value.Prove);

    [Fact]
    public void Nobody_is_told_of_picovolts()
    {
        var said = Monitor.Value.Suspects.SelectMany(s => s.Explains.Concat(s.Misfits)).ToList();

        Assert.NotEmpty(said);
        Assert.DoesNotContain(said, s => s.Contains(" pV") || s.Contains(" nV") || s.Contains(" µV"));
    }

    private static DiagnosisResult Demo(string folder)
    {
        var readings = File.ReadAllText(DemoUnits.PathOf(folder, "readings.yaml"));
        return new DiagnoseUnit(DemoUnits.Of(folder)).Run(new() { ReadingsText = readings }).Result!;
    }
}
