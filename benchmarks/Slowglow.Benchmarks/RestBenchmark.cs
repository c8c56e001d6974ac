using System.Globalization;
using Slowglow.Solving;

namespace Slowglow.Benchmarks;

/// <summary>Resting states of the stage chain, ours on one thread beside the reference solver in the same process.</summary>
internal sealed class RestBenchmark
{
    public const string Argument = "rest";
    private const int Repeats = 600;
    private const double Relative = 1e-4;
    private const double Absolute = 1e-4;
    private readonly StageChain chain;
    private readonly double[] healthy;
    private readonly RestReference reference;
    private readonly StaticSolver solver;

    public RestBenchmark(int stages, bool capacitors = false)
    {
        chain = new StageChain(stages, capacitors);
        solver = new StaticSolver(chain.Equations);
        var problem = new StaticProblem { Slots = chain.Slots, Start = new double[chain.Equations.Unknowns] };
        solver.Solve([problem]);
        healthy = problem.Settled
            ? problem.Solution
            : throw new InvalidOperationException("The chain of stages has no resting state.");
        reference = RestReference.Of(chain.Equations, problem)!;
    }

    /// <summary>(a): so many single faults, each solved from the healthy state.</summary>
    public string SingleFaults(int count)
    {
        var faults = chain.Faults.Take(count).ToArray();
        List<StaticProblem> solved = [];
        var ours = Watch.Best(Repeats, () => solved = Solve(faults));
        var unsettled = solved.Count(p => !p.Settled);
        using var session = new ReferenceSession([.. chain.Cards, .. Nodeset()]);
        var disagree = new List<string>();
        var figures = 0;
        var theirs = Watch.Once(() =>
        {
            foreach (var (fault, problem) in faults.Zip(solved))
            {
                session.Solve(fault.Name, fault.Failed);
                ReferenceSession.Say(FormattableString.Invariant($"alter {fault.Name} = {fault.Made:R}"));
            }
        });
        ReferenceSession.Forget();
        foreach (var (fault, problem) in faults.Zip(solved))
        {
            session.Solve(fault.Name, fault.Failed);
            figures += Compare(fault.Name, fault.Failed, problem, disagree);
            ReferenceSession.Forget();
            ReferenceSession.Say(FormattableString.Invariant($"alter {fault.Name} = {fault.Made:R}"));
        }

        return Row(
                $"(a) {faults.Length} single faults, {chain.Parts} parts, {healthy.Length} nets, {chain.Coupling}",
                ours,
                theirs,
                faults.Length
            )
            + string.Create(
                CultureInfo.InvariantCulture,
                $"\n    {unsettled} unsettled, {solved.Average(p => p.Steps):0.0} steps each; of {figures} volts {disagree.Count} differ by more than 0.01 % + 0.1 mV"
            )
            + string.Concat(disagree.Take(8).Select(d => "\n      " + d));
    }

    /// <summary>(b): one resistor swept, against the reference's own warm sweep.</summary>
    public string Sweep(int points)
    {
        var swept = chain.Faults.First(f => f.Name == "ra1");
        double Ohms(int k) => 50e3 + (k * 100e3 / points);
        var ours = Watch.Best(Repeats, () => Solve(Enumerable.Range(0, points).Select(k => swept with { Failed = Ohms(k) })));
        using var session = new ReferenceSession([.. chain.Cards, .. Nodeset()]);
        var command = FormattableString.Invariant($"dc ra1 {Ohms(0):R} {Ohms(points - 1):R} {100e3 / points:R}");
        var theirs = Watch.Once(() => ReferenceSession.Say(command));
        return Row($"(b) {points} points of one resistor swept", ours, theirs, points);
    }

    /// <summary>
    /// (e): every pair of so many faults, on all cores: each fault settled once, then the relative that every other fault is put into. The
    /// reference is taken at its rate for single faults.
    /// </summary>
    public string Pairs(int count)
    {
        var faults = chain.Faults.Take(count).ToArray();
        var unsettled = 0;
        var ours = Watch.Best(3, () => unsettled = SolvePairs(faults));
        var all = Enumerable.Range(0, faults.Length).Sum(i => faults.Skip(i + 1).Count(f => f.Slot != faults[i].Slot));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"(e) {all} pairs of {faults.Length} faults, {chain.Coupling}, on {Environment.ProcessorCount} threads: {ours * 1e3:0} ms, {all / ours:0} a second; {unsettled} unsettled"
        );
    }

    private int SolvePairs((string Name, int Slot, double Made, double Failed)[] faults)
    {
        var unsettled = 0;
        var taken = -1;
        Parallel.For(
            0,
            Environment.ProcessorCount,
            _ =>
            {
                var worker = new StaticSolver(chain.Equations);
                var slots = faults.Select(_ => new double[chain.Slots.Length]).ToArray();
                for (var i = Interlocked.Increment(ref taken); i < faults.Length; i = Interlocked.Increment(ref taken))
                {
                    Interlocked.Add(ref unsettled, PairsOf(faults, i, worker, slots));
                }
            }
        );
        return unsettled;
    }

    /// <summary>One fault together with each that comes after it; how many did not settle.</summary>
    private int PairsOf(
        (string Name, int Slot, double Made, double Failed)[] faults,
        int i,
        StaticSolver worker,
        double[][] slots
    )
    {
        var first = Problem(slots[i], reference, faults[i]);
        worker.Solve([first]);
        var relative = RestReference.Of(chain.Equations, first) ?? reference;
        var pairs = new List<StaticProblem>(faults.Length);
        for (var j = i + 1; j < faults.Length; j++)
        {
            if (faults[j].Slot != faults[i].Slot)
            {
                pairs.Add(Problem(slots[j], relative, faults[i], faults[j]));
            }
        }

        worker.Solve(pairs);
        return pairs.Count(p => !p.Settled);
    }

    /// <summary>How cost grows: faults a second on one thread.</summary>
    public string Growth()
    {
        var faults = chain.Faults.Take(400).ToArray();
        List<StaticProblem> solved = [];
        var ours = Watch.Best(Repeats, () => solved = Solve(faults));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"    {chain.Parts, 4} parts {healthy.Length, 4} nets {ours / faults.Length * 1e6, 8:0.00} us a fault {faults.Length / ours, 10:0} a second; {solved.Count(p => !p.Settled)} unsettled"
        );
    }

    private List<StaticProblem> Solve(IEnumerable<(string Name, int Slot, double Made, double Failed)> faults)
    {
        var problems = faults.Select(f => Problem(new double[chain.Slots.Length], reference, f)).ToList();
        solver.Solve(problems);
        return problems;
    }

    private StaticProblem Problem(
        double[] slots,
        RestReference relative,
        params ReadOnlySpan<(string Name, int Slot, double Made, double Failed)> faults
    )
    {
        chain.Slots.CopyTo(slots, 0);
        foreach (var fault in faults)
        {
            slots[fault.Slot] = 1 / fault.Failed;
        }

        return new StaticProblem
        {
            Slots = slots,
            Start = healthy,
            Relative = relative,
        };
    }

    private IEnumerable<string> Nodeset() =>
        chain.Nets.Select(n => FormattableString.Invariant($".nodeset v({n.Key})={healthy[n.Value]:R}"));

    private int Compare(string name, double failed, StaticProblem problem, List<string> disagree)
    {
        foreach (var (net, row) in chain.Nets)
        {
            var theirs = ReferenceSession.Volts(net);
            var mine = problem.Solution[row];
            if (!(Math.Abs(mine - theirs) <= Absolute + (Relative * Math.Abs(theirs))))
            {
                disagree.Add(FormattableString.Invariant($"{name} = {failed:G3} ohm: {net} {mine:G7} V against {theirs:G7} V"));
            }
        }

        return chain.Nets.Count;
    }

    private static string Row(string what, double ours, double reference, int count) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what}\n    ours {ours * 1e3:0.000} ms ({count / ours:0} a second), reference {reference * 1e3:0} ms ({count / reference:0} a second), ratio {reference / ours:0}"
        );
}
