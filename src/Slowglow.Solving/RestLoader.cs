using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Puts worlds at rest into lanes one at a time. A relative of a reference costs only what it changes; what the world before it
/// changed is first put back, by value, so that nothing piles up.
/// </summary>
internal sealed class RestLoader
{
    private readonly LaneSystem system;
    private readonly Equations equations;
    private readonly int[][] positions;
    private readonly RestReference?[] loaded = new RestReference?[Lanes.Width];
    private readonly List<int>[] slots = [.. Enumerable.Range(0, Lanes.Width).Select(_ => new List<int>())];
    private readonly List<int>[] branches = [.. Enumerable.Range(0, Lanes.Width).Select(_ => new List<int>())];
    private readonly List<int>[] rows = [.. Enumerable.Range(0, Lanes.Width).Select(_ => new List<int>())];

    public RestLoader(LaneSystem system)
    {
        (this.system, equations) = (system, system.Equations);
        positions = [.. equations.Branches.Select(b => equations.Pattern.PositionsOf(b.Rows))];
        Linear = new Lane[system.Factors.Values.Length];
        Sources = new Lane[equations.Unknowns];
    }

    /// <summary>The linear part of the matrix and of the right side.</summary>
    public Lane[] Linear { get; }
    public Lane[] Sources { get; }

    /// <summary>Forgets what the lanes hold.</summary>
    public void Forget() => Array.Clear(loaded);

    public void Load(int lane, StaticProblem problem, double swing)
    {
        if (problem.Relative is { } reference && reference.Swing == swing)
        {
            LoadNear(lane, problem, reference);
        }
        else
        {
            LoadWhole(lane, problem, swing);
        }
    }

    private void LoadNear(int lane, StaticProblem problem, RestReference reference)
    {
        if (loaded[lane] == reference)
        {
            PutBack(lane, reference);
        }
        else
        {
            Copy(reference.Slots, system.Slots, lane);
            Copy(reference.Linear, Linear, lane);
            Copy(reference.Sources, Sources, lane);
            loaded[lane] = reference;
        }

        Differences(reference.Slots, problem.Slots, slots[lane]);
        branches[lane].Clear();
        rows[lane].Clear();
        var (volts, currents, slopes) = problem.Advanced ?? (reference.PortVolts, reference.Currents, reference.Slopes);
        system.Elements.Put(lane, volts, currents, slopes);
        foreach (var slot in slots[lane])
        {
            Lanes.Put(ref system.Slots[slot], lane, problem.Slots[slot]);
            foreach (var element in equations.Uses.Elements(slot))
            {
                system.Elements.Touch(element, lane);
            }

            foreach (var branch in equations.Uses.Branches(slot))
            {
                Change(lane, branch, reference, problem);
            }
        }

        foreach (var (row, amps) in problem.Pushed)
        {
            rows[lane].Add(row);
            Add(Sources, row, lane, amps);
        }
    }

    private void PutBack(int lane, RestReference reference)
    {
        foreach (var slot in slots[lane])
        {
            Lanes.Put(ref system.Slots[slot], lane, reference.Slots[slot]);
        }

        foreach (var branch in branches[lane])
        {
            foreach (var position in positions[branch])
            {
                Lanes.Put(ref Linear[position], lane, reference.Linear[position]);
            }
        }

        foreach (var row in rows[lane])
        {
            Lanes.Put(ref Sources[row], lane, reference.Sources[row]);
        }
    }

    /// <summary>Slots in which two worlds differ.</summary>
    public static void Differences(double[] one, double[] other, List<int> found)
    {
        found.Clear();
        var a = MemoryMarshal.Cast<double, Lane>(one);
        var b = MemoryMarshal.Cast<double, Lane>(other);
        for (var v = 0; v < a.Length; v++)
        {
            if (a[v] != b[v])
            {
                AddDifferences(one, other, v * 4, (v * 4) + 4, found);
            }
        }

        AddDifferences(one, other, a.Length * 4, one.Length, found);
    }

    private static void AddDifferences(double[] one, double[] other, int from, int to, List<int> found)
    {
        for (var s = from; s < to; s++)
        {
            if (one[s] != other[s])
            {
                found.Add(s);
            }
        }
    }

    private void Change(int lane, int index, RestReference reference, StaticProblem problem)
    {
        if (branches[lane].Contains(index))
        {
            return;
        }

        branches[lane].Add(index);
        var branch = equations.Branches[index];
        var siemens = RestBranch.Siemens(branch, problem.Slots) - RestBranch.Siemens(branch, reference.Slots);
        var amps =
            RestBranch.SourceAmps(branch, problem.Slots, reference.Swing)
            - RestBranch.SourceAmps(branch, reference.Slots, reference.Swing);
        var n = branch.Rows.Length;
        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b < n; b++)
            {
                Add(Linear, positions[index][(a * n) + b], lane, branch.Weights[a] * branch.Weights[b] * siemens);
            }

            if (amps != 0)
            {
                rows[lane].Add(branch.Rows[a]);
                Add(Sources, branch.Rows[a], lane, branch.Weights[a] * amps);
            }
        }
    }

    private void LoadWhole(int lane, StaticProblem problem, double swing)
    {
        loaded[lane] = null;
        Copy(problem.Slots, system.Slots, lane);
        Copy(problem.Start, system.X, lane);
        Clear(Linear, lane);
        Clear(Sources, lane);
        for (var index = 0; index < positions.Length; index++)
        {
            var branch = equations.Branches[index];
            var siemens = RestBranch.Siemens(branch, problem.Slots);
            var amps = RestBranch.SourceAmps(branch, problem.Slots, swing);
            var n = branch.Rows.Length;
            for (var a = 0; a < n; a++)
            {
                for (var b = 0; b < n; b++)
                {
                    Add(Linear, positions[index][(a * n) + b], lane, branch.Weights[a] * branch.Weights[b] * siemens);
                }

                Add(Sources, branch.Rows[a], lane, branch.Weights[a] * amps);
            }
        }

        for (var r = 0; r < equations.Unknowns; r++)
        {
            Add(Linear, equations.Pattern.Diagonal[r], lane, LaneSystem.Leak);
        }

        foreach (var (row, amps) in problem.Pushed)
        {
            Add(Sources, row, lane, amps);
        }

        system.Elements.Linearise(system.X, lane);
    }

    private static void Copy(double[] from, Lane[] to, int lane)
    {
        for (var i = 0; i < from.Length; i++)
        {
            Lanes.Put(ref to[i], lane, from[i]);
        }
    }

    private static void Clear(Lane[] to, int lane)
    {
        for (var i = 0; i < to.Length; i++)
        {
            Lanes.Put(ref to[i], lane, 0);
        }
    }

    private static void Add(Lane[] to, int at, int lane, double value) =>
        Lanes.Put(ref to[at], lane, Lanes.Get(in to[at], lane) + value);
}
