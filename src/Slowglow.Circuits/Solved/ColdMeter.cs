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

    /// <summary>Volts below which a junction has no part in a reading.</summary>
    private const double LeastVolts = 1e-3;
    private const double DiodeCompliance = 2.8;

    private sealed record Task(int World, int Probe, int Red, int Black, double Amps, StaticProblem Problem);

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
        foreach (var task in tasks)
        {
            answers[task.World][task.Probe] = Read(worlds[task.World], probes[task.Probe], task);
        }

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

        var ohms = OhmsBetween(world, red, black);
        var amps = probe.Kind == ProbeKind.Diode ? DiodeAmps : Math.Min(1e-3, TestVolts / Math.Min(ohms, LargestOhms));
        return new Task(w, index, red, black, amps, ProblemOf(world, red, black, amps, Math.Min(amps * ohms, 0.6)));
    }

    /// <summary>
    /// Rough ohms to choose the meter's current by. On an island that nothing ties to ground, such as a primary with the plug out, the
    /// difference of two resistances of gigaohms says nothing; an ohm will do then, for what is read comes from the solve.
    /// </summary>
    private static double OhmsBetween(WorldState world, int red, int black) => Math.Max(world.OhmsBetween(red, black), 1);

    private static StaticProblem ProblemOf(WorldState world, int red, int black, double amps, double volts)
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
        var n = world.Unknowns;
        var ohms = OhmsBetween(world, red, black);
        var start = new double[n];
        for (var r = 0; r < n; r++)
        {
            var share = (red < 0 ? 0 : world.Resistance[(r * n) + red]) - (black < 0 ? 0 : world.Resistance[(r * n) + black]);
            start[r] = share / ohms * volts;
        }

        return new StaticProblem
        {
            Slots = world.Slots,
            Start = start,
            Pushed = pushed,
        };
    }

    private Answer Read(WorldState world, Probe probe, Task task)
    {
        if (!task.Problem.Settled)
        {
            return Answer.None(AnswerKind.Unsettled);
        }

        var x = task.Problem.Solution;
        var volts = (task.Red < 0 ? 0 : x[task.Red]) - (task.Black < 0 ? 0 : x[task.Black]);
        if (probe.Kind == ProbeKind.Diode)
        {
            return volts > DiodeCompliance
                ? Answer.None(AnswerKind.Overload)
                : new Answer(AnswerKind.Value, volts, Spread(world, x, task.Amps, true));
        }

        var ohms = volts / task.Amps;
        return ohms > LargestOhms
            ? Answer.None(AnswerKind.Overload)
            : new Answer(AnswerKind.Value, ohms, Spread(world, x, task.Amps * task.Amps));
    }

    /// <summary>
    /// Change of the reading with every resistance: a resistive network answers a change of conductance dg with -dg u^2 / I (reciprocity).
    /// A junction's saturation current scales what it carries, and counts as such a conductance on the ohms ranges.
    /// </summary>
    private double[] Spread(WorldState world, double[] x, double over, bool isDiodeTest = false)
    {
        var spread = new double[circuit.Parameters.Count];
        for (var p = 0; p < spread.Length; p++)
        {
            foreach (var change in circuit.Changes[p])
            {
                if (circuit.Owners.BranchAt(change.Slot) is not { } branch || branch.Kind == BranchKind.Storage)
                {
                    spread[p] -= change.Relative * JunctionWatts(p, change.Slot, world, x, isDiodeTest) / over;
                    continue;
                }

                double u = 0;
                for (var k = 0; k < branch.Rows.Length; k++)
                {
                    u += branch.Weights[k] * x[branch.Rows[k]];
                }

                var slot = world.Slots[branch.Slot];
                var siemensChange = branch.Kind == BranchKind.Conductance ? slot * change.Relative : -change.Relative / slot;
                if (branch.Slot == change.Slot)
                {
                    spread[p] -= siemensChange * u * u / over;
                }
            }
        }

        return spread;
    }

    /// <summary>Current of a junction times the volts that a change of it moves: all of them at small volts, its slope's when it is turned on.</summary>
    private double JunctionWatts(int parameter, int slot, WorldState world, double[] x, bool isDiodeTest)
    {
        if (!circuit.Parameters[parameter].What.StartsWith("is", StringComparison.Ordinal))
        {
            return 0;
        }

        var element = circuit.Owners.ElementAt(slot);
        if (element is null || !IsUnderVolts(element, x))
        {
            return 0;
        }

        var rest = new ElementAtRest(element, world.Slots, x);
        double sum = 0;
        for (var k = 0; k < rest.Amps.Length; k++)
        {
            var turnedOn = isDiodeTest && rest.Slope(k, k) > 0;
            sum += rest.Amps[k] * (turnedOn ? rest.Amps[k] / rest.Slope(k, k) : rest.Volts[k]);
        }

        return sum;
    }

    private static bool IsUnderVolts(Element element, double[] x)
    {
        double At(int row) => row < 0 ? 0 : x[row];
        return element.Rows.Any(r => Math.Abs(At(r) - At(element.Rows[^1])) > LeastVolts);
    }
}
