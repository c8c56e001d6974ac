using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>
/// How means move with every parameter of a rectifier with a filter behind it, against the same unit solved with that parameter altered. One world alone has its
/// directions side by side in the lanes, four worlds have one direction each: both must come to the same.
/// </summary>
public sealed class SpreadOfCycleTests
{
    private const double Hertz = 50;
    private const int Unknowns = 3;
    private const int Steps = 120;

    private static readonly (Equations Equations, double[] Slots) Unit = Build();

    // Volts and conductance of the source, saturation current, both reservoirs, the filter's conductance and the load's.
    private static readonly int[] Altered = [0, 1, 2, 9, 10, 11, 12];
    private static readonly SlotChange[][] Parameters = [.. Altered.Select(s => new[] { new SlotChange(s, 1, 0) })];

    [Fact]
    public void Follows_every_parameter_as_altering_it_does()
    {
        var alone = Solved([1])[0];
        for (var p = 0; p < Altered.Length; p++)
        {
            const double Part = 0.01;
            var (more, less) = (Mean(Altered[p], 1 + Part), Mean(Altered[p], 1 - Part));
            for (var r = 0; r < Unknowns; r++)
            {
                var expected = (more[r] - less[r]) / (2 * Part);
                Assert.Equal(expected, alone.MeanSpread[(p * Unknowns) + r], (0.01 * Math.Abs(expected)) + 0.05);
            }
        }
    }

    [Fact]
    public void A_world_alone_moves_as_it_does_among_four()
    {
        var alone = Solved([1])[0];
        var among = Solved([1, 1.1, 0.9, 1.2])[0];
        Assert.Equal(among.MeanSpread, alone.MeanSpread);
        Assert.Equal(among.RmsSpread, alone.RmsSpread);
    }

    private static double[] Mean(int slot, double times)
    {
        var slots = Unit.Slots.ToArray();
        slots[slot] *= times;
        var problem = Problem(slots, withSpread: false);
        new CycleSolver(Unit.Equations, Steps, Parameters).Solve([problem], Hertz);
        return problem.Mean;
    }

    /// <summary>Worlds that differ in the source's volts.</summary>
    private static CycleProblem[] Solved(double[] volts)
    {
        CycleProblem[] problems = [.. volts.Select(v => Problem([v * Unit.Slots[0], .. Unit.Slots.Skip(1)], withSpread: true))];
        new CycleSolver(Unit.Equations, Steps, Parameters).Solve(problems, Hertz);
        Assert.All(problems, p => Assert.True(p.Settled));
        return problems;
    }

    private static CycleProblem Problem(double[] slots, bool withSpread) =>
        new()
        {
            Slots = slots,
            Start = [0, 250, 240],
            States = [250, 240],
            WithSpread = withSpread,
        };

    private static (Equations Equations, double[] Slots) Build()
    {
        var b = new EquationsBuilder();
        int anode = b.NewUnknown(),
            hot = b.NewUnknown(),
            smooth = b.NewUnknown();
        var swing = b.NewSlot(300);
        b.AddBranch(BranchKind.Conductance, anode, -1, b.NewSlot(1 / 100.0), -1, swing);
        var first = b.NewSlot(1e-9);
        foreach (var constant in new[] { 1.5, 0.1, 1e5, 1, 1e-6, 1 })
        {
            b.NewSlot(constant);
        }

        b.AddElement(new DiodeLaw(), [anode, hot], first);
        b.AddBranch(BranchKind.Storage, hot, -1, b.NewSlot(32e-6));
        b.AddBranch(BranchKind.Storage, smooth, -1, b.NewSlot(16e-6));
        b.AddBranch(BranchKind.Conductance, hot, smooth, b.NewSlot(1 / 1000.0));
        b.AddBranch(BranchKind.Conductance, smooth, -1, b.NewSlot(1 / 20e3));
        return (b.Build(), b.SlotValues());
    }
}
