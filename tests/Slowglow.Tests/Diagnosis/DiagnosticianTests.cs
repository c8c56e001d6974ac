using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

public sealed class DiagnosticianTests
{
    private readonly TwoDividers network = new();
    private readonly Diagnostician diagnostician;

    public DiagnosticianTests() => diagnostician = new(network);

    [Fact]
    public void Probabilities_of_suspects_healthy_and_none_sum_to_one()
    {
        var result = Diagnose(null, Dc("A", 20));

        Assert.Equal(1, result.Suspects.Sum(s => s.Probability) + result.Healthy + result.NoneOfThese, 9);
        Assert.Equal(result.Suspects.OrderByDescending(s => s.Probability), result.Suspects);
    }

    [Fact]
    public void A_low_divider_points_at_its_two_resistors_and_a_cold_reading_decides()
    {
        var drifted = new Fault("R1", "", FailureMode.Drifted, 2.4);
        var low = network.Exact("A", drifted);

        var before = Diagnose(null, Dc("A", low));
        Assert.Equal(["R1", "R2"], before.Suspects.Take(2).Select(s => s.Part).Order());
        Assert.True(before.Suspects.Take(2).Sum(s => s.Probability) > 0.9);

        var after = Diagnose(null, Dc("A", low), Dc("HT", 99.8), Ohms("R1", network.ExactOhms("R1", drifted)));
        Assert.Equal("R1", after.Suspects[0].Part);
        Assert.True(after.Suspects[0].Probability > 0.95, after.Summary);
        Assert.Contains(after.Suspects[0].Explains, e => e.StartsWith("A would read", StringComparison.Ordinal));
    }

    [Fact]
    public void Rails_that_move_with_the_mains_do_not_accuse_a_part()
    {
        // All dividers 6 % low is two standard deviations of the mains, once, and no fault.
        var result = Diagnose(null, Dc("HT", 94), Dc("A", 47), Dc("B", 47), Dc("C", 47), Dc("D", 93.9));

        var accused = result.Suspects.Where(s => s.Part is not ("R8" or "R9" or "F1")).Sum(s => s.Probability);
        Assert.True(result.Healthy > accused, result.Summary);
    }

    [Fact]
    public void Two_resistors_side_by_side_are_one_group_with_what_would_separate_them()
    {
        var open = network.Exact("C", new Fault("R5", "", FailureMode.Open));

        var result = Diagnose(null, Dc("HT", 100), Dc("C", open));

        var group = result.Suspects.Single(s => s.Group.Contains("R5"));
        Assert.Contains("R6", group.Group);
        Assert.Contains("Lift a leg of R5", group.Separates);
    }

    [Fact]
    public void Readings_that_no_two_faults_explain_end_in_none_of_these()
    {
        // A, B and D all wrong, with HT and C right: three faults.
        var result = Diagnose(null, Dc("HT", 100), Dc("A", 12), Dc("B", 88), Dc("C", 50), Dc("D", 40));

        Assert.True(result.NoneOfThese > 0.5, result.Summary);
        Assert.Contains("several things", result.Summary);
    }

    [Fact]
    public void The_next_reading_is_new_tells_something_and_stops_when_settled()
    {
        var first = Diagnose(null, Dc("A", 25));
        Assert.NotEmpty(first.Next);
        Assert.DoesNotContain(first.Next, n => n.Probe.Red == "A" && n.Probe.Kind == ProbeKind.Dc);
        Assert.All(first.Next, n => Assert.InRange(n.Bits, 0.05, 4));
        Assert.All(first.Next, n => Assert.Equal(1, n.Outcomes.Sum(o => o.Probability), 1));

        var drifted = new Fault("R1", "", FailureMode.Drifted, 3);
        var settled = Diagnose(null, Dc("HT", 100), Dc("A", 25), Ohms("R1", network.ExactOhms("R1", drifted)));
        Assert.True(settled.Suspects[0].Probability > 0.95, settled.Summary);
        Assert.Empty(settled.Next);
    }

    [Fact]
    public void A_complaint_of_one_channel_accuses_the_parts_of_that_channel()
    {
        var result = Diagnose("first channel gritty and quiet, second one fine");

        Assert.Equal("R1", result.Suspects[0].Part);
        Assert.Equal(FailureMode.Drifted, result.Suspects[0].Fault.Mode);
        Assert.True(result.Suspects[0].Probability > 0.5, result.Summary);
        Assert.Contains(result.Complaint, w => w is { Descriptor: "rough early", Channel: "one", Computed: true });
        Assert.Contains(result.Complaint, w => w is { Descriptor: "fine", Channel: "two" });
    }

    [Fact]
    public void A_short_that_blows_the_fuse_is_named_behind_the_blown_fuse()
    {
        var result = Diagnose("fuse blown", Ohms("R9", 0.2), Dc("HT", 0));

        Assert.Equal("R9", result.Suspects[0].Part);
        Assert.True(result.Suspects[0].Probability > 0.8, result.Summary);
        Assert.Contains(result.Suspects[0].Explains, e => e.Contains("F1, which blows", StringComparison.Ordinal));
        Assert.Contains(result.RootCauses, c => c.Victim == "R9" && c.Part == "R8");
    }

    [Fact]
    public void Overload_across_a_part_is_an_open_part()
    {
        var open = new Reading(
            TwoDividers.Across("R8"),
            Setup.Cold,
            MeterSaid.Overload,
            double.NaN,
            MeterClass.Handheld,
            "R8 = OL",
            Place.None
        );

        var result = Diagnose(null, open, Dc("D", 0));

        Assert.Equal("R8", result.Suspects[0].Part);
        Assert.Equal(FailureMode.Open, result.Suspects[0].Fault.Mode);
        Assert.Equal("far too high", result.Readings[0].Word);
    }

    [Fact]
    public void Verdicts_come_in_the_order_of_the_readings()
    {
        var result = Diagnose(null, Ohms("R1", 66e3), Dc("A", 20), Dc("B", 50));

        Assert.Equal(["R1", "A", "B"], result.Readings.Select(r => r.Reading.Probe.Where));
        Assert.Equal("far too low", result.Readings[1].Word);
        Assert.Equal("as expected", result.Readings[2].Word);
        Assert.InRange(result.Readings[2].Nominal, 49.9, 50.1);
    }

    private DiagnosisResult Diagnose(string? complaint, params Reading[] readings) =>
        diagnostician.Diagnose(new Evidence(complaint, [Setup.Default, Setup.Cold], readings));

    private static Reading Dc(string net, double volts) =>
        new(TwoDividers.Dc(net), Setup.Default, MeterSaid.Value, volts, MeterClass.Handheld, "", Place.None);

    private static Reading Ohms(string part, double ohms) =>
        new(TwoDividers.Across(part), Setup.Cold, MeterSaid.Value, ohms, MeterClass.Handheld, "", Place.None);
}
