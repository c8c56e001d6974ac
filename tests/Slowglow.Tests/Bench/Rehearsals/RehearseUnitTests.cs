using Slowglow.Bench.Rehearsals;

namespace Slowglow.Tests.Bench.Rehearsals;

/// <summary>
/// Whole rehearsals, small ones: docs/rehearsal.md has the large ones. The floors are far below what is found there, so that they fall only when
/// something is broken.
/// </summary>
public class RehearseUnitTests
{
    private static readonly Lazy<RehearseUnit> Rehearse = new(() => new(SheetLibraryTests.Open("wheatear-p40")));

    [Fact]
    public void The_program_finds_most_of_what_is_hidden()
    {
        var report = Rehearse.Value.Run(new() { Cases = 14, Seed = 3 }, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(14, report.Singles.Count);
        Assert.InRange(report.First, 0.7, 1);
        Assert.InRange(report.FirstThree, 0.8, 1);
        Assert.All(report.Cases, c => Assert.Equal(c.Steps.Count + 1, c.Statements.Count));
    }

    [Fact]
    public void Another_way_of_working_gets_the_same_units_and_takes_longer()
    {
        var program = Rehearse.Value.Run(new() { Cases = 6, Seed = 4 }, cancel: TestContext.Current.CancellationToken);
        var random = Rehearse.Value.Run(
            new()
            {
                Cases = 6,
                Seed = 4,
                By = Strategy.Random,
            },
            cancel: TestContext.Current.CancellationToken
        );
        var halving = Rehearse.Value.Run(
            new()
            {
                Cases = 6,
                Seed = 4,
                By = Strategy.Halving,
            },
            cancel: TestContext.Current.CancellationToken
        );
        Assert.Equal(program.Cases.Select(c => c.Hidden.Words), random.Cases.Select(c => c.Hidden.Words));
        Assert.Equal(program.Cases.Select(c => c.Hidden.Words), halving.Cases.Select(c => c.Hidden.Words));
        Assert.True(program.Readings < random.Readings);
        Assert.True(program.Readings < halving.Readings);
    }

    [Fact]
    public void The_programs_way_can_be_seen_afterwards()
    {
        var unit = SheetLibraryTests.Open("wheatear-p40");
        var hidden = new HiddenUnits(unit, 9, null, TestContext.Current.CancellationToken).Hide(
            0,
            HiddenKind.Single,
            FaultDraw.Uniform,
            TestContext.Current.CancellationToken
        )!;
        var way = new RehearseUnit(unit).ProgramsWay(hidden, null, TestContext.Current.CancellationToken);
        Assert.Same(hidden.Fault, way.Hidden);
        Assert.Empty(hidden.Readings);
        Assert.True(way.Steps.Count > 0 || way.IsCertain);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        var told = 0;
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Rehearse.Value.Run(
                new() { Cases = 50 },
                null,
                _ =>
                {
                    told++;
                    stop.Cancel();
                },
                stop.Token
            )
        );
        Assert.Equal(1, told);
    }
}
