using Slowglow.Circuits;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>Laws that hold for any sheet with its mains on, held on stages drawn at random.</summary>
public sealed class SheetLawTests
{
    private const int Sheets = 12;

    /// <summary>Volts that a cycle found from elsewhere may be off behind the megohms of these stages.</summary>
    private const double Settling = 5e-4;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void The_order_of_parts_in_the_sheet_does_not_matter()
    {
        for (var seed = 0; seed < Sheets; seed++)
        {
            var random = new Random(seed);
            var blocks = RandomStages.Of(random);
            var drawn = RandomStages.Bench(blocks);
            var shuffled = RandomStages.Bench(blocks.OrderBy(_ => random.Next()));
            var (one, other) = (State(drawn, Setup.Default), State(shuffled, Setup.Default));
            Assert.True(one.Settled && other.Settled);
            foreach (var (net, row) in drawn.Circuit.Rows)
            {
                var (a, b) = (row, shuffled.Circuit.Rows[net]);
                Assert.Equal(one.MeanAt(a), other.MeanAt(b), Settling + (2e-5 * Math.Abs(one.MeanAt(a))));
                Assert.Equal(one.RmsBetween(a, -1), other.RmsBetween(b, -1), 1e-4 + (1e-3 * one.RmsBetween(a, -1)));
            }

            Assert.Equal(Level(drawn), Level(shuffled), 1e-4 * Level(drawn));
        }
    }

    private static double Level(SheetOnBench bench) => bench.Volts("OUT2 ac 1kHz");

    /// <summary>Mean watts from the outlet against the watts in all parts and in the outlet's own resistance.</summary>
    [Fact]
    public void What_the_mains_gives_the_parts_turn_to_heat()
    {
        for (var seed = 0; seed < Sheets; seed++)
        {
            var bench = RandomStages.Bench(RandomStages.Of(new Random(100 + seed)));
            var world = State(bench, Setup.Default);
            var fixtures = bench.Circuit.Fixtures;
            var siemens = fixtures.MainsSiemens(world.Slots);
            double given = 0,
                lost = 0;
            for (var k = 0; k < world.Steps; k++)
            {
                var source = fixtures.MainsSwing(world.Slots) * Math.Sin(2 * Math.PI * (k + 1) / world.Steps);
                var amps = siemens * (source - world.At(k, fixtures.LiveRow) + world.At(k, fixtures.NeutralRow));
                given += source * amps / world.Steps;
                lost += amps * amps / siemens / world.Steps;
            }

            var taken = bench.Worlds.Stress(Setup.Default, []).Where(s => double.IsFinite(s.Watts)).Sum(s => s.Watts);
            Assert.Equal(given, taken + lost, 0.02 * given);
        }
    }

    [Fact]
    public void A_fault_of_no_effect_changes_nothing()
    {
        for (var seed = 0; seed < Sheets; seed++)
        {
            string[] idle =
            [
                "  W90: wire HT -> HTX",
                "  R90: 10k HT -> HTX",
                "  C90: 100n 63V HT -> HTX",
                "  V90: 12AX7 6=GND 7=GND 8=GND",
                "  R91: 47k OUT2 -> END",
                "  R92: 47k END -> GND",
            ];
            var bench = RandomStages.Bench(RandomStages.Of(new Random(200 + seed)).Concat(idle));
            var cut = Setup.Default with { Name = "cut", Lifted = ["R91"] };
            Fault[] faults =
            [
                new("R90", "", FailureMode.Open),
                new("R90", "", FailureMode.Drifted, 3),
                new("C90", "", FailureMode.Open),
                new("C90", "", FailureMode.Short),
                new("V90", "", FailureMode.LowEmission, 0.3),
                new("R92", "", FailureMode.Short),
                new("R91", "", FailureMode.Open),
            ];
            var healthy = State(bench, cut);
            foreach (var fault in faults)
            {
                Assert.True(bench.Circuit.Knows(fault), fault.ToString());
                var world = State(bench, cut, fault);
                Assert.True(world.Settled);
                foreach (var (net, row) in bench.Circuit.Rows.Where(r => r.Key != "END"))
                {
                    Assert.Equal(healthy.MeanAt(row), world.MeanAt(row), Settling + (2e-5 * Math.Abs(healthy.MeanAt(row))));
                }
            }
        }
    }

    private static WorldState State(SheetOnBench bench, Setup setup, params Fault[] faults)
    {
        var solver = new WorldSolver(bench.Circuit);
        var world = solver.New(setup, faults);
        solver.Batch([world], faults.Length > 0 ? solver.Healthy(setup, "healthy") : null, Cancel);
        return world;
    }
}
