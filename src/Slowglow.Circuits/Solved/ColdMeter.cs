using Slowglow.Sheets.Readings;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Ohms and diode test in worlds without power: the same circuit with the meter's own current in it.</summary>
internal sealed class ColdMeter(Circuit circuit)
{
    /// <summary>What an ordinary handheld can show, ohms.</summary>
    private const double LargestOhms = 60e6;

    /// <summary>Volts that the ohms ranges keep below: too little to turn a junction on (reference/meter_facts.csv gives makers' currents).</summary>
    private const double TestVolts = 0.25;
    private const double DiodeAmps = 1e-3;
    private const double MostAmps = 1e-3;
    private const double LeastOhms = 1e-3;

    /// <summary>A turned-on junction holds about this.</summary>
    private const double MostStartVolts = 0.6;

    /// <summary>Volts below which a junction has no part in a reading.</summary>
    private const double LeastVolts = 1e-3;
    private const double DiodeCompliance = 2.8;

    /// <summary>Volts at which junctions are still straight, and the share by which a reading may be bent and count as straight.</summary>
    private const double NearNothing = 5e-3;
    private const double Straight = 0.02;

    /// <summary>
    /// Resistances are kept in single precision: a difference smaller than this share of what was subtracted has no digit left. So it is on an island
    /// that little ties to ground, such as a primary with the plug out.
    /// </summary>
    private const double Trusted = 1e-4;

    private readonly AdjointAtRest adjoint = new(circuit.Equations);

    /// <param name="Ohms">By unknown, for an ampere through the meter at no volts at all.</param>
    private sealed record Task(int World, int Probe, int Red, int Black, double Amps, double[] Ohms, StaticProblem Problem);

    /// <summary>Answers of all worlds to all probes; every pair is a solve of its own.</summary>
    public Answer[][] Of(IReadOnlyList<WorldState> worlds, IReadOnlyList<Probe> probes, CancellationToken cancel)
    {
        var answers = worlds.Select(_ => new Answer[probes.Count]).ToArray();
        var tasks = new List<Task>();
        for (var w = 0; w < worlds.Count; w++)
        {
            for (var p = 0; p < probes.Count; p++)
            {
                if (Prepare(worlds, w, probes[p], p, out var answer) is { } task)
                {
                    tasks.Add(task);
                }
                else
                {
                    answers[w][p] = answer;
                }
            }
        }

        new StaticSolver(circuit.Equations).Solve([.. tasks.Select(t => t.Problem)], 0, cancel);
        ReadAll(worlds, probes, tasks, answers);
        return answers;
    }

    private Task? Prepare(IReadOnlyList<WorldState> worlds, int w, Probe probe, int index, out Answer answer)
    {
        var world = worlds[w];
        answer = Answer.None(world.Settled ? AnswerKind.NotApplicable : AnswerKind.Unsettled);
        if (!world.Settled || probe.IsInlet)
        {
            return null;
        }

        if (!circuit.Rows.TryGetValue(probe.Red, out var red) || !circuit.Rows.TryGetValue(probe.Black, out var black))
        {
            answer = Answer.None(AnswerKind.Overload);
            return null;
        }

        if (red == black)
        {
            answer = new Answer(AnswerKind.Value, 0, new double[circuit.Parameters.Count]);
            return null;
        }

        var ohms = OhmsOf(world, red, black);
        var between = Math.Clamp(At(ohms, red) - At(ohms, black), LeastOhms, LargestOhms);
        var amps = probe.Kind == ProbeKind.Diode ? DiodeAmps : Math.Min(MostAmps, TestVolts / between);
        return new Task(w, index, red, black, amps, ohms, ProblemOf(world, red, black, amps, ohms));
    }

    /// <summary>Ohms by unknown for an ampere through the meter, at no volts at all: what its current is chosen by, and where the solve starts.</summary>
    private double[] OhmsOf(WorldState world, int red, int black)
    {
        var n = world.Unknowns;
        double R(int r, int c) => r < 0 || c < 0 ? 0 : world.Resistance[(r * n) + c];
        if (world.OhmsBetween(red, black) < Trusted * Math.Max(R(red, red), R(black, black)))
        {
            return adjoint.Of([(world.Slots, new double[n], red, black)])[0];
        }

        var ohms = new double[n];
        for (var r = 0; r < n; r++)
        {
            ohms[r] = R(r, red) - R(r, black);
        }

        return ohms;
    }

    private static StaticProblem ProblemOf(WorldState world, int red, int black, double amps, double[] ohms)
    {
        var pushed = new List<(int, double)>();
        if (red >= 0)
        {
            pushed.Add((red, amps));
        }

        if (black >= 0)
        {
            pushed.Add((black, -amps));
        }

        // Start from the straight-line answer, scaled to what a junction would let stand.
        var between = At(ohms, red) - At(ohms, black);
        var scale = Math.Min(amps, MostStartVolts / between);
        return new StaticProblem
        {
            Slots = world.Slots,
            Start = Array.ConvertAll(ohms, o => o * scale),
            Pushed = pushed,
        };
    }

    /// <summary>Reads the meter in every world that came to rest, four at a time.</summary>
    private void ReadAll(IReadOnlyList<WorldState> worlds, IReadOnlyList<Probe> probes, List<Task> tasks, Answer[][] answers)
    {
        foreach (var four in tasks.Where(t => t.Problem.Settled).Chunk(Lanes.Width))
        {
            var weights = adjoint.Of([.. four.Select(t => (t.Problem.Slots, t.Problem.Solution, t.Red, t.Black))]);
            foreach (var (task, weight) in four.Zip(weights))
            {
                answers[task.World][task.Probe] = Read(worlds[task.World], probes[task.Probe], task, weight);
            }
        }

        foreach (var task in tasks.Where(t => !t.Problem.Settled))
        {
            answers[task.World][task.Probe] = Answer.None(AnswerKind.Unsettled);
        }
    }

    private Answer Read(WorldState world, Probe probe, Task task, double[] weight)
    {
        var x = task.Problem.Solution;
        var volts = (task.Red < 0 ? 0 : x[task.Red]) - (task.Black < 0 ? 0 : x[task.Black]);
        if (probe.Kind == ProbeKind.Diode)
        {
            return volts > DiodeCompliance
                ? Answer.None(AnswerKind.Overload)
                : new Answer(AnswerKind.Value, volts, Spread(world, x, weight, 1));
        }

        var ohms = volts / task.Amps;
        return ohms > LargestOhms
            ? Answer.None(AnswerKind.Overload)
            : new Answer(AnswerKind.Value, ohms, WithRange(world, task, ohms, weight, Spread(world, x, weight, task.Amps)));
    }

    /// <summary>
    /// What a junction shows in ohms hangs on the current that the meter sends, and that on the range it takes, which goes with the ohms at no volts at all:
    /// what moves those moves the reading too.
    /// </summary>
    private double[] WithRange(WorldState world, Task task, double ohms, double[] weight, double[] spread)
    {
        var between = At(task.Ohms, task.Red) - At(task.Ohms, task.Black);
        var bent = ohms - (At(weight, task.Red) - At(weight, task.Black));
        if (task.Amps >= MostAmps || between >= LargestOhms || Math.Abs(bent) < Straight * ohms)
        {
            return spread;
        }

        var amps = NearNothing / between;
        var atNothing = Spread(world, Array.ConvertAll(task.Ohms, o => o * amps), task.Ohms, amps);
        for (var p = 0; p < spread.Length; p++)
        {
            spread[p] += bent * atNothing[p] / between;
        }

        return spread;
    }

    /// <summary>Change of the reading with every resistance and every constant of a device's law.</summary>
    private double[] Spread(WorldState world, double[] x, double[] weight, double over)
    {
        var spread = new double[circuit.Parameters.Count];
        for (var p = 0; p < spread.Length; p++)
        {
            foreach (var change in circuit.Changes[p])
            {
                if (circuit.Owners.BranchAt(change.Slot) is { } branch && branch.Kind != BranchKind.Storage)
                {
                    spread[p] -= branch.Slot == change.Slot ? ByBranch(world, branch, change, x, weight) / over : 0;
                }
                else
                {
                    spread[p] -= change.Relative * ByElement(p, change.Slot, world, x, weight) / over;
                }
            }
        }

        return spread;
    }

    private static double ByBranch(WorldState world, Branch branch, SlotChange change, double[] x, double[] weight)
    {
        var slot = world.Slots[branch.Slot];
        var siemensChange = branch.Kind == BranchKind.Conductance ? slot * change.Relative : -change.Relative / slot;
        return siemensChange * Across(branch, x) * Across(branch, weight);
    }

    private static double Across(Branch branch, double[] x)
    {
        double sum = 0;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            sum += branch.Weights[k] * x[branch.Rows[k]];
        }

        return sum;
    }

    /// <summary>
    /// Volts at the meter that the current counts for by which an element answers a constant of its law, for all of the constant. A saturation current
    /// scales whatever the junction carries.
    /// </summary>
    private double ByElement(int parameter, int slot, WorldState world, double[] x, double[] weight)
    {
        if (circuit.Owners.ElementAt(slot) is not { } element || !IsUnderVolts(element, x))
        {
            return 0;
        }

        var rest = new ElementAtRest(element, world.Slots, x);
        var scales = circuit.Parameters[parameter].What.StartsWith("is", StringComparison.Ordinal);
        var amps = scales ? rest.Amps : rest.ByConstant(slot - element.Slot);
        double sum = 0;
        for (var k = 0; k < amps.Length; k++)
        {
            sum += amps[k] * (At(weight, element.Rows[k]) - At(weight, element.Rows[^1]));
        }

        return sum;
    }

    private static bool IsUnderVolts(Element element, double[] x) =>
        element.Rows.Any(r => Math.Abs(At(x, r) - At(x, element.Rows[^1])) > LeastVolts);

    private static double At(double[] x, int row) => row < 0 ? 0 : x[row];
}
