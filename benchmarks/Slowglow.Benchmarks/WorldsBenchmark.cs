using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>
/// Every single fault of a sheet solved to its steady state, ours on all cores, beside the reference solver settling a sample of the same
/// worlds: from our own means, which spares it most of its way and is what nobody without us could do, and a few from everything discharged.
/// </summary>
internal sealed class WorldsBenchmark(string folder)
{
    private const int Sample = 12;
    private const int FromRest = 3;
    private const int Seed = 1;
    private const int Runs = 3;
    private readonly Circuit circuit = Circuit.From(DemoSheets.Read(folder)).Value!;

    public WorldsRow Run()
    {
        IReadOnlyList<IReadOnlyList<Fault>> sets = [.. circuit.Faults.Select(f => new[] { f })];
        var probes = circuit.Sheet.Nets.Names.Where(n => n != NetTable.Ground).SelectMany(Probes).ToArray();
        IReadOnlyList<Answer[]> answers = [];

        // A new set of worlds each time: nothing is remembered from the run before.
        var ours = Watch.Best(Runs, () => answers = new Worlds(circuit).Ask(Setup.Default, sets, probes, MeterClass.Handheld));
        var reference = Sampled(sets.Count).Select(i => Reference(sets[i], probes, answers[i])).OfType<double>().ToArray();
        var rest = Sampled(sets.Count)
            .Select(i => Seconds(sets[i], s => s.SettleFromRest()))
            .OfType<double>()
            .Take(FromRest)
            .ToArray();
        return new(
            folder,
            sets.Count,
            ours / sets.Count,
            reference.Length,
            reference.DefaultIfEmpty(double.NaN).Average(),
            rest.Length,
            rest.DefaultIfEmpty(double.NaN).Average()
        );
    }

    private static IEnumerable<int> Sampled(int count)
    {
        var order = Enumerable.Range(0, count).ToArray();
        new Random(Seed).Shuffle(order);
        return order.Take(Sample);
    }

    private static IEnumerable<Probe> Probes(string net) =>
        [new(net, net, NetTable.Ground, ProbeKind.Dc), new(net, net, NetTable.Ground, ProbeKind.Ac)];

    /// <summary>Seconds that the reference takes; null where it does not settle.</summary>
    private double? Reference(IReadOnlyList<Fault> faults, Probe[] probes, Answer[] answers)
    {
        var known = probes.Zip(answers).Where(p => p.Second.HasValue).ToArray();
        var means = known.Where(p => p.First.Kind == ProbeKind.Dc).ToDictionary(p => p.First.Red, p => p.Second.Value);
        var ripples = known.Where(p => p.First.Kind == ProbeKind.Ac).ToDictionary(p => p.First.Red, p => p.Second.Value);
        return Seconds(faults, s => s.SettleFrom(means, net => ripples.GetValueOrDefault(net)));
    }

    private double? Seconds(IReadOnlyList<Fault> faults, Func<SteadyState, bool> settle)
    {
        var settled = false;
        try
        {
            var seconds = Watch.Once(() =>
                settled = settle(new SteadyState(new ReferenceCircuit(circuit.Sheet, Setup.Default, faults)))
            );
            return settled ? seconds : null;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
