using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Working storage for four worlds of one structure: slots, linear part, elements linearised at their last voltages, factors.
/// Not thread-safe: one for each worker.
/// </summary>
internal sealed class LaneSystem
{
    /// <summary>Siemens from every unknown to ground: keeps the matrix regular; a net held by nothing else is reported as floating.</summary>
    public const double Leak = 1e-12;
    private readonly int[][] branchPositions;

    private readonly Lane[] extra = [Lanes.Zero];

    public LaneSystem(Equations equations)
    {
        Equations = equations;
        Factors = new LaneFactors(equations.Pattern);
        Slots = new Lane[equations.Slots];
        X = new Lane[equations.Unknowns];
        RightSide = new Lane[equations.Unknowns];
        branchPositions = [.. equations.Branches.Select(b => equations.Pattern.PositionsOf(b.Rows))];
        Elements = new ElementLanes(equations);
    }

    public Equations Equations { get; }
    public LaneFactors Factors { get; }
    public ElementLanes Elements { get; }
    public Lane[] Slots { get; }

    /// <summary>Latest solution.</summary>
    public Lane[] X { get; }
    public Lane[] RightSide { get; }

    /// <summary>Extra siemens on the diagonal, for stepping. Not in the object itself: what takes such an object cannot be compiled ahead.</summary>
    public ref Lane Extra => ref extra[0];

    /// <summary>Sum of the branch's weights times the unknowns in <paramref name="x"/>.</summary>
    public static Lane Across(Branch branch, ReadOnlySpan<Lane> x)
    {
        var sum = Lanes.Zero;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            sum += branch.Weights[k] * x[branch.Rows[k]];
        }

        return sum;
    }

    /// <summary>Adds a current that the branch drives into its rows to the right side.</summary>
    public static void Push(Branch branch, in Lane current, Span<Lane> rightSide)
    {
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            rightSide[branch.Rows[k]] += branch.Weights[k] * current;
        }
    }

    /// <summary>Adds siemens of a branch to a matrix.</summary>
    public void Stamp(int branch, in Lane siemens, Lane[] matrix)
    {
        var weights = Equations.Branches[branch].Weights;
        var positions = branchPositions[branch];
        var n = weights.Length;
        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b < n; b++)
            {
                matrix[positions[(a * n) + b]] += weights[a] * weights[b] * siemens;
            }
        }
    }

    /// <summary>Siemens of a branch when states change at <paramref name="rate"/> per second (0 = at rest).</summary>
    public Lane SiemensOf(Branch branch, double rate) =>
        branch.Kind switch
        {
            BranchKind.Conductance => Slots[branch.Slot],
            BranchKind.Storage => rate * Slots[branch.Slot],
            _ => Lanes.One / (Slots[branch.Slot] + (rate * Slots[branch.SteadySlot])),
        };

    /// <summary>The linear part of the matrix for a rate of change.</summary>
    public void AssembleLinear(double rate, Lane[] matrix)
    {
        Array.Clear(matrix);
        var branches = Equations.Branches;
        for (var b = 0; b < branches.Count; b++)
        {
            Stamp(b, SiemensOf(branches[b], rate), matrix);
        }

        var leak = Lanes.All(Leak) + Extra;
        for (var r = 0; r < Equations.Unknowns; r++)
        {
            matrix[Equations.Pattern.Diagonal[r]] += leak;
        }
    }

    /// <summary>Right side of the sources, with the sine at <paramref name="swing"/> and everything times <paramref name="scale"/>.</summary>
    public void AssembleSources(double swing, in Lane scale, Lane[] rightSide)
    {
        Array.Clear(rightSide);
        foreach (var branch in Equations.Branches)
        {
            if (branch.Kind == BranchKind.Conductance && (branch.SteadySlot >= 0 || branch.SwingSlot >= 0))
            {
                Push(branch, scale * Slots[branch.Slot] * SourceOf(branch, swing), rightSide);
            }
        }
    }

    /// <summary>Volts in series with a conductance branch.</summary>
    public Lane SourceOf(Branch branch, double swing)
    {
        var volts = branch.SteadySlot >= 0 ? Slots[branch.SteadySlot] : Lanes.Zero;
        return branch.SwingSlot >= 0 ? volts + (swing * Slots[branch.SwingSlot]) : volts;
    }

    /// <summary>Lanes whose solution holds a NaN or infinity (bit per lane).</summary>
    public uint Broken()
    {
        var sum = Lanes.Zero;
        foreach (var x in X)
        {
            sum += x * Lanes.Zero;
        }

        return ~Vector256.Equals(sum, Lanes.Zero).ExtractMostSignificantBits() & 0xF;
    }
}
