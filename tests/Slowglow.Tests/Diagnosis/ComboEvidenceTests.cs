using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>A whole valve amplifier: looks and tracer's notes through its solved worlds, and figures that it cannot make.</summary>
public sealed class ComboEvidenceTests
{
    [Fact]
    public void A_rail_above_the_transformers_peak_is_met_by_a_sentence()
    {
        var result = Ask("HT1 = 520 V", "V1.6 = 150 V");

        Assert.Contains("HT1 = 520 V is above the", Assert.Single(result.Doubts));
        Assert.Contains("T1.HT peaks at", result.Doubts[0]);
        Assert.True(result.NoneOfThese >= 0.49, result.Summary);
    }

    [Fact]
    public void A_rail_that_floats_up_without_its_load_is_possible() => Assert.Empty(Ask("HT4 = 345 V").Doubts);

    [Fact]
    public void A_tracer_stops_at_the_part_that_does_not_pass_the_signal()
    {
        var result = AskWith("first channel silent", "signal at V1.6, none at TS1", "V1.6 = 154 V");

        Assert.Contains("C6", result.Suspects.Take(3).SelectMany(s => s.Group));
        Assert.True(result.Suspects.First(s => s.Group.Contains("C6")).Probability > 0.3, result.Summary);
    }

    [Fact]
    public void A_dark_heater_in_a_valve_whose_neighbours_glow_is_that_valve()
    {
        var result = Ask("V2 heater dark", "V1 heater glowing");

        Assert.Equal("V2", result.Suspects[0].Part);
        Assert.True(result.Suspects[0].Probability > 0.3, result.Summary);
        Assert.Equal("heater", result.Suspects[0].Fault.Where);
    }

    [Fact]
    public void A_red_anode_is_explained_by_its_watts()
    {
        var result = Ask("V4 anode red");

        Assert.Contains(result.Suspects[0].Explains, e => e.Contains("V4 would turn", StringComparison.Ordinal));
    }

    /// <summary>A resistor from the next drawer, and one of the wrong decade: no drift, and no rung of a ladder either.</summary>
    [Theory]
    [InlineData("4.7k")]
    [InlineData("940")]
    public void A_part_that_measures_another_value_than_the_drawings_is_convicted(string ohms)
    {
        var result = AskWith("first channel quiet", "V1.6 = 242 V", $"R10 = {ohms} ohm on cold");

        Assert.Equal("R10", result.Suspects[0].Part);
        Assert.True(result.Suspects[0].Probability > 0.5, result.Summary);
    }

    private static DiagnosisResult Ask(params string[] lines) => AskWith(null, lines);

    private static DiagnosisResult AskWith(string? complaint, params string[] lines)
    {
        var asked = new DiagnoseUnit(DemoUnits.Of("kittiwake-15")).Run(new() { Lines = lines, Complaint = complaint });
        Assert.Empty(asked.LineFindings.Select(f => f.Text));
        return asked.Result!;
    }
}
