using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>Two faults at once, in a network that is worked by hand.</summary>
public sealed class PairTests
{
    private static readonly string[] Points = ["HT", "A", "B", "C", "D"];
    private readonly TwoDividers network = new();
    private readonly Diagnostician diagnostician;

    public PairTests() => diagnostician = new(network);

    [Fact]
    public void Two_dividers_wrong_at_once_are_two_parts_and_the_list_still_sums_to_one()
    {
        var result = Diagnose(new Fault("R1", "", FailureMode.Open), new Fault("R4", "", FailureMode.Short));

        var pairs = result.Suspects.Where(s => s.Second is not null).ToList();
        Assert.NotNull(result.Suspects[0].Second);
        Assert.Equal(2, result.Suspects[0].Group.Count);
        Assert.Contains(pairs, s => s.Group.SequenceEqual(["R1", "R4"]) && s.Probability > 0.02);
        Assert.Contains(" and ", result.Suspects[0].Words);
        Assert.Equal(1, result.Suspects.Sum(s => s.Probability) + result.Healthy + result.NoneOfThese, 9);
        Assert.Contains(result.Suspects[0].Explains, e => e.StartsWith("Two faults at once", StringComparison.Ordinal));
    }

    [Fact]
    public void One_fault_that_explains_everything_is_not_doubted_for_a_pair()
    {
        var result = Diagnose(new Fault("R7", "", FailureMode.Open));

        Assert.Null(result.Suspects[0].Second);
        Assert.Equal("R7", result.Suspects[0].Part);
        Assert.True(result.Suspects.Where(s => s.Second is not null).Sum(s => s.Probability) < 0.05, result.Summary);
    }

    [Theory]
    [InlineData("R1", FailureMode.Open, 0.0, "R3", FailureMode.Open, 0.0)]
    [InlineData("R1", FailureMode.Drifted, 2.5, "R7", FailureMode.Open, 0.0)]
    [InlineData("R4", FailureMode.Open, 0.0, "R7", FailureMode.Drifted, 2.0)]
    [InlineData("R3", FailureMode.Drifted, 4.0, "R5", FailureMode.Open, 0.0)]
    [InlineData("R4", FailureMode.Drifted, 0.5, "R8", FailureMode.Open, 0.0)]
    [InlineData("R2", FailureMode.Drifted, 3.4, "R6", FailureMode.Open, 0.0)]
    public void No_wrong_single_fault_is_claimed_for_two(
        string a,
        FailureMode modeA,
        double severityA,
        string b,
        FailureMode modeB,
        double severityB
    )
    {
        var result = Diagnose(new Fault(a, "", modeA, severityA), new Fault(b, "", modeB, severityB));

        var wrong = result.Suspects.Where(s => !s.Group.Contains(a) && !s.Group.Contains(b));
        Assert.All(wrong, s => Assert.True(s.Probability < 0.7, $"{s.Words} {s.Probability:F2}"));
        Assert.True(result.Suspects[0].Group.Contains(a) || result.Suspects[0].Group.Contains(b), result.Summary);
    }

    [Fact]
    public void A_part_that_the_other_fault_overloads_is_the_likelier_partner()
    {
        var list = HypothesisList.From(network.Faults, [.. network.Faults.Select(_ => 1.0)], []);
        var cascades = new Cascades(list, new(network, list));
        int Index(string part, FailureMode mode) => network.Faults.ToList().FindIndex(f => f.Part == part && f.Mode == mode) + 1;
        var shorted = Index("R9", FailureMode.Short);

        // R9 short leaves 10 ohm across 100 V: 1 kW in a 2 W part.
        Assert.Equal(20, cascades.Raise(shorted, Index("R8", FailureMode.Open)), 6);
        Assert.Equal(1, cascades.Raise(Index("R1", FailureMode.Open), Index("R4", FailureMode.Open)), 6);
    }

    private DiagnosisResult Diagnose(params Fault[] faults) =>
        diagnostician.Diagnose(new Evidence(null, [Setup.Default, Setup.Cold], [.. Points.Select(p => Read(p, faults))]));

    private Reading Read(string net, Fault[] faults) =>
        new(
            TwoDividers.Dc(net),
            Setup.Default,
            MeterSaid.Value,
            Math.Round(network.Exact(net, faults), 2),
            MeterClass.Handheld,
            "",
            Place.None
        );
}
