using Slowglow.Bench.Rehearsals;

namespace Slowglow.Tests.Bench.Rehearsals;

/// <summary>Counted by hand.</summary>
public class ReliabilityTests
{
    private static Statement[] Say(double probability, int right, int wrong) =>
        [
            .. Enumerable.Repeat(new Statement(probability, true, 0, 0), right),
            .. Enumerable.Repeat(new Statement(probability, false, 0, 0), wrong),
        ];

    [Fact]
    public void What_is_true_as_often_as_it_is_said_has_no_error()
    {
        var reliability = Reliability.Of([.. Say(0.25, 1, 3), .. Say(0.75, 3, 1), .. Say(1, 5, 0)]);
        Assert.Equal(0, reliability.ExpectedError, 12);
        Assert.Equal(13, reliability.Bins.Sum(b => b.Statements));
    }

    [Fact]
    public void The_error_is_weighed_by_statements()
    {
        // Six at 92 % of which half are true are off by 0.42; four at 45 % that are all true by 0.55.
        var reliability = Reliability.Of([.. Say(0.92, 3, 3), .. Say(0.45, 4, 0)]);
        Assert.Equal((6 * 0.42 + 4 * 0.55) / 10, reliability.ExpectedError, 12);
        var high = reliability.Bins.Single(b => b.Low == 0.9);
        Assert.Equal((6, 0.5), (high.Statements, high.Right));
    }

    [Fact]
    public void Nothing_said_has_no_figure() => Assert.True(double.IsNaN(Reliability.Of([]).ExpectedError));
}
