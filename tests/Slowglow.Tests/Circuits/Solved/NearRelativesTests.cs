using Slowglow.Circuits;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver;
using Xunit;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>
/// Worlds found from their healthy relative against the same worlds solved the long way: from the crest of the mains, following every state
/// and every parameter through the cycle.
/// </summary>
public sealed class NearRelativesTests
{
    private const int Faults = 40;

    [Theory]
    [InlineData("kittiwake-15", 21)]
    [InlineData("saltmarsh-lm2", 22)]
    [InlineData("heronsgate-m60", 23)]
    public void Means_and_bands_agree_with_the_long_way(string folder, int seed)
    {
        var circuit = Circuit.From(DemoSheets.Read(folder)).Value!;
        var solver = new WorldSolver(circuit);
        var picked = new Random(seed).GetItems([.. circuit.Faults], circuit.Faults.Count).Distinct().Take(Faults).ToArray();
        var shortWay = Solve(solver, picked, solver.Healthy(Setup.Default, "healthy"));
        var longWay = Solve(solver, picked, null);

        var (bands, apart) = (0, new List<string>());
        foreach (var (near, far) in shortWay.Zip(longWay).Where(p => p.First.Settled && p.Second.Settled))
        {
            for (var r = 0; r < near.Unknowns; r++)
            {
                // A net that nothing holds has no figure to compare.
                if (far.Resistance[(r * far.Unknowns) + r] > 1e8)
                {
                    continue;
                }

                Assert.Equal(far.Mean[r], near.Mean[r], 2e-3 + (2e-4 * Math.Abs(far.Mean[r])));
                bands++;
                var (a, b) = (Sigma(near, r), Sigma(far, r));
                if (Math.Abs(a - b) > 2e-3 + (0.2 * b) + (1e-3 * Math.Abs(far.Mean[r])))
                {
                    apart.Add(
                        FormattableString.Invariant($"{near.Faults[0]} row {r}: {a:G4} against {b:G4} of {far.Mean[r]:G5}")
                    );
                }
            }
        }

        Assert.True(bands > 1000);
        Assert.True(apart.Count <= bands / 100, string.Join('\n', apart));
        Assert.True(shortWay.Count(w => !w.Settled) <= longWay.Count(w => !w.Settled));
    }

    [Fact]
    public void Behind_a_limiter_what_does_not_settle_is_said_not_to()
    {
        var circuit = Circuit.From(DemoSheets.Read("heronsgate-m60")).Value!;
        var setup = Setup.Default with { LimiterWatts = 60 };
        string[] parts = ["D1", "D4", "Q8", "R17", "Q12"];
        IReadOnlyList<IReadOnlyList<Fault>> sets =
        [
            [],
            .. circuit.Faults.Where(f => parts.Contains(f.Part)).Select(f => new[] { f }),
        ];
        Probe[] probes = [new("RAWP", "RAWP", NetTable.Ground, ProbeKind.Dc)];
        var answers = new Worlds(circuit).Ask(
            setup,
            sets,
            probes,
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        );
        Assert.Equal(AnswerKind.Value, answers[0][0].Kind);
        Assert.All(answers, a => Assert.True(a[0].Kind == AnswerKind.Unsettled || double.IsFinite(a[0].Value)));
    }

    [Fact]
    public void Spread_of_means_equals_finite_differences()
    {
        var circuit = Circuit.From(DemoSheets.Read("kittiwake-15")).Value!;
        var solver = new WorldSolver(circuit);
        var healthy = solver.Healthy(Setup.Default, "healthy");
        const double Share = 0.02;
        foreach (var p in Enumerable.Range(0, circuit.Parameters.Count).Where(p => p % 9 == 0))
        {
            var (up, down) = (Moved(circuit, solver, p, Share), Moved(circuit, solver, p, -Share));
            for (var r = 0; r < healthy.Unknowns; r++)
            {
                if (healthy.Resistance[(r * healthy.Unknowns) + r] < 1e8)
                {
                    var difference = (up.Mean[r] - down.Mean[r]) / (2 * Share);
                    var spread = healthy.MeanSpread[(p * healthy.Unknowns) + r];
                    Assert.Equal(difference, spread, 0.01 + (0.02 * Math.Abs(difference)));
                }
            }
        }
    }

    [Fact]
    public void A_world_is_the_same_alone_and_in_company()
    {
        var circuit = Circuit.From(DemoSheets.Read("saltmarsh-lm2")).Value!;
        var solver = new WorldSolver(circuit);
        var healthy = solver.Healthy(Setup.Default, "healthy");
        var some = circuit.Faults.Where((_, k) => k % 60 == 0).ToArray();
        var together = Solve(solver, some, healthy);
        foreach (var (fault, world) in some.Zip(together))
        {
            var alone = Solve(solver, [fault], healthy)[0];
            Assert.Equal(alone.Settled, world.Settled);
            for (var r = 0; r < alone.Unknowns && alone.Settled; r++)
            {
                Assert.Equal(alone.Mean[r], world.Mean[r], 1e-6 + (1e-6 * Math.Abs(alone.Mean[r])));
            }
        }
    }

    private static WorldState Moved(Circuit circuit, WorldSolver solver, int parameter, double share)
    {
        var world = solver.New(Setup.Default, []);
        foreach (var change in circuit.Changes[parameter])
        {
            world.Slots[change.Slot] += share * ((change.Relative * world.Slots[change.Slot]) + change.Absolute);
        }

        solver.Batch([world], null, TestContext.Current.CancellationToken);
        return world;
    }

    private static WorldState[] Solve(WorldSolver solver, IReadOnlyList<Fault> faults, WorldState? relative)
    {
        WorldState[] worlds = [.. faults.Select(f => solver.New(Setup.Default, [f]))];
        solver.Batch(worlds, relative, TestContext.Current.CancellationToken);
        return worlds;
    }

    private static double Sigma(WorldState world, int row)
    {
        double sum = 0;
        for (var at = row; at < world.MeanSpread.Length; at += world.Unknowns)
        {
            sum += (double)world.MeanSpread[at] * world.MeanSpread[at];
        }

        return Math.Sqrt(sum);
    }
}
