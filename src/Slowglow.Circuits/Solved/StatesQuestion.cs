using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Looks for further states of rest: every element that amplifies is held at one end and at the other (an op-amp stuck, a transistor or valve
/// off or its output pushed), let go, and the circuit settled from there; also from nothing and from the rails swapped. The rectified rails are held where they stand. Balances that fall
/// over by themselves do not count.
/// </summary>
internal sealed class StatesQuestion
{
    private const double MostPush = 0.1;
    private const double LeastDifference = 0.2;
    private const double RelativeDifference = 0.05;
    private readonly AskedWorld asked;
    private readonly double[] slots;
    private readonly double[] mean;

    public StatesQuestion(AskedWorld asked)
    {
        this.asked = asked;
        mean = asked.State.Mean;
        slots = (double[])asked.State.Slots.Clone();
        asked.Circuit.Fixtures.HoldRails(mean, slots);
    }

    /// <summary>Each state once; empty when the world has a single state.</summary>
    public IReadOnlyList<OtherState> Ask(CancellationToken cancel)
    {
        var here = Settle([Problem(mean, [])], cancel);
        if (here.Count == 0)
        {
            return [];
        }

        List<StaticProblem> pushed =
        [
            .. ControlledSource.In(asked.Circuit.Equations, slots, here[0]).SelectMany(s => Held(s, here[0])),
        ];
        List<double[]> starts = [.. Settle(pushed, cancel), new double[mean.Length], [.. mean.Select(v => -v)]];
        List<double[]> found = [here[0]];
        foreach (var state in Settle([.. starts.Select(s => Problem(s, []))], cancel))
        {
            if (found.All(f => Differ(f, state).Count > 0) && Stands(state))
            {
                found.Add(state);
            }
        }

        return [.. found.Skip(1).Select(s => new OtherState(Differ(here[0], s)))];
    }

    /// <summary>True when the state that figures are given for does not fall over by itself.</summary>
    public bool Stands(CancellationToken cancel) => Settle([Problem(mean, [])], cancel) is not [var here, ..] || Stands(here);

    private StaticProblem Problem(double[] start, (int, double)[] push) =>
        new()
        {
            Slots = slots,
            Start = start,
            Pushed = push,
        };

    private List<double[]> Settle(IReadOnlyList<StaticProblem> problems, CancellationToken cancel)
    {
        new StaticSolver(asked.Circuit.Equations).Solve(problems, 0, cancel);
        return [.. problems.Where(p => p.Settled).Select(p => p.Solution)];
    }

    private IEnumerable<StaticProblem> Held(ControlledSource source, double[] from)
    {
        var element = asked.Circuit.Equations.Elements[source.Element];
        switch (element.Law)
        {
            case OpAmpLaw:
                yield return With(from, element.Slot + (int)OpAmpLaw.Constant.Stuck, 1);
                yield return With(from, element.Slot + (int)OpAmpLaw.Constant.Stuck, -1);
                yield break;
            case BjtLaw:
                yield return With(from, element.Slot + (int)BjtLaw.Constant.Transport, 0);
                break;
            case FieldEffectLaw:
                yield return With(from, element.Slot + (int)FieldEffectLaw.Constant.Channel, 0);
                break;
        }

        foreach (var row in element.Rows.Where(r => r >= 0).Take(2))
        {
            yield return Problem(from, [(row, PushAmps(row))]);
            yield return Problem(from, [(row, -PushAmps(row))]);
        }
    }

    private double PushAmps(int row) =>
        Math.Min(2 * mean.Max(Math.Abs) / Math.Max(asked.State.OhmsBetween(row, -1), 1e-3), MostPush);

    private StaticProblem With(double[] from, int slot, double value)
    {
        var changed = (double[])slots.Clone();
        changed[slot] = value;
        return new StaticProblem { Slots = changed, Start = from };
    }

    private List<(string Net, double Volts, double Other)> Differ(double[] a, double[] b) =>
        [
            .. asked
                .Circuit.Rows.Where(r => r.Value >= 0)
                .Select(r => (Net: r.Key, Volts: a[r.Value], Other: b[r.Value], r.Value))
                .Where(r =>
                    Math.Abs(r.Volts - r.Other)
                        > LeastDifference + (RelativeDifference * Math.Max(Math.Abs(r.Volts), Math.Abs(r.Other)))
                    && asked.State.OhmsBetween(r.Value, -1) < 20e6
                )
                .OrderByDescending(r => Math.Abs(r.Volts - r.Other))
                .Select(r => (r.Net, r.Volts, r.Other)),
        ];

    private bool Stands(double[] state) => Balance.Stands(asked.Circuit.Equations, slots, state);
}
