using System.Globalization;
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

    /// <summary>Readings of a solved unit whose V4 is dead: two valves on one cathode resistor, so that its volts fall by less than valves differ.</summary>
    [Fact]
    public void What_moves_within_the_band_of_healthy_units_is_named_all_the_same()
    {
        var v4 = Diagnose(
            "kittiwake-15",
            "complaint: rough and quiet\nsetups:\n  driven: { mains: 230 V, channel: second }\nreadings:\n  - V4.9 = 72.7 mV 1kHz\n"
        )
            .Suspects.Single(s => s.Part == "V4");

        Assert.Contains("V4 dead: ", v4.Explains[0], StringComparison.Ordinal);
        Assert.Contains("falls to", v4.Explains[0], StringComparison.Ordinal);
        Assert.EndsWith("no further than healthy units differ.", v4.Explains[0], StringComparison.Ordinal);
    }

    /// <summary>Readings of a solved unit whose U3 holds its output high: the millivolts that pass a dead stage are no figure to decide by.</summary>
    [Fact]
    public void A_stuck_op_amp_leads_before_a_part_that_hardly_ever_fails_so()
    {
        var suspects = Diagnose(
            "saltmarsh-lm2",
            "complaint: silent\nsetups:\n  bench: { mains: 230 V }\nreadings:\n  - RET = -14.3 mV\n  - HOT = 1.23 V\n  - U5.3 = 900 uV 1kHz\n  - SEND = 2 mV 1kHz\n  - U3.7 = 1.9 mV 1kHz\n"
        ).Suspects;

        Assert.Equal("U3", suspects[0].Part);
        Assert.True(suspects[0].Probability > 0.5, suspects[0].Probability.ToString(CultureInfo.InvariantCulture));
    }

    private static DiagnosisResult Demo(string folder) =>
        Diagnose(folder, File.ReadAllText(DemoUnits.PathOf(folder, "readings.yaml")));

    private static DiagnosisResult Diagnose(string folder, string readings) =>
        new DiagnoseUnit(DemoUnits.Of(folder)).Run(new() { ReadingsText = readings }).Result!;
}
