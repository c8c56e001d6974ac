using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// A settled resting state that relatives of its world start from: its tangents, its matrix, and how it answers a current through any
/// branch, so that a relative in which one branch changed is known to first order before anything is factored. Immutable.
/// </summary>
public sealed class RestReference
{
    private RestReference(Equations equations, double[] slots, double swing) =>
        (Equations, Slots, Swing) = (equations, slots, swing);

    internal Equations Equations { get; }
    internal double[] Slots { get; }
    internal double Swing { get; }
    internal double[] X { get; private set; } = [];
    internal double[] Linear { get; private set; } = [];
    internal double[] Sources { get; private set; } = [];
    internal double[] PortVolts { get; private set; } = [];
    internal double[] Currents { get; private set; } = [];
    internal double[] Slopes { get; private set; } = [];

    /// <summary>For each branch the change of every unknown for one ampere through its weights; empty for storage, which is open at rest.</summary>
    internal double[][] Answers { get; private set; } = [];

    /// <summary>Makes a reference of a settled problem; null where it did not settle.</summary>
    public static RestReference? Of(Equations equations, StaticProblem problem, double swing = 0)
    {
        if (!problem.Settled)
        {
            return null;
        }

        var reference = new RestReference(equations, problem.Slots, swing);
        var system = new LaneSystem(equations);
        for (var s = 0; s < system.Slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(problem.Slots[s]);
        }

        for (var r = 0; r < system.X.Length; r++)
        {
            system.X[r] = Lanes.All(problem.Solution[r]);
        }

        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        reference.Fill(system, problem);
        return reference;
    }

    private void Fill(LaneSystem system, StaticProblem problem)
    {
        X = problem.Solution;
        (PortVolts, Currents, Slopes) = system.Elements.Take(0);
        var matrix = system.Factors.Values;
        system.AssembleLinear(0, matrix);
        Linear = First(matrix);
        var sources = new Lane[X.Length];
        system.AssembleSources(Swing, Lanes.One, sources);
        Sources = First(sources);
        foreach (var (row, amps) in problem.Pushed)
        {
            Sources[row] += amps;
        }

        system.Elements.Stamp(matrix, sources);
        system.Factors.Factor();
        Answers = new double[Equations.Branches.Count][];
        Array.Fill(Answers, []);
        int[] conducting = [.. Enumerable.Range(0, Answers.Length).Where(b => Equations.Branches[b].Kind != BranchKind.Storage)];
        foreach (var four in conducting.Chunk(Lanes.Width))
        {
            Answer(system, four);
        }
    }

    private void Answer(LaneSystem system, int[] four)
    {
        Array.Clear(system.X);
        for (var lane = 0; lane < four.Length; lane++)
        {
            var branch = Equations.Branches[four[lane]];
            for (var k = 0; k < branch.Rows.Length; k++)
            {
                Lanes.Put(ref system.X[branch.Rows[k]], lane, branch.Weights[k]);
            }
        }

        system.Factors.Solve(system.X);
        for (var lane = 0; lane < four.Length; lane++)
        {
            var at = lane;
            Answers[four[lane]] = Lanes.Column(system.X, at);
        }
    }

    private static double[] First(Lane[] lanes) => Lanes.Column(lanes, 0);
}
