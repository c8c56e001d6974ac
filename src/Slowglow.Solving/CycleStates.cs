namespace Slowglow.Solving;

/// <summary>How large a change of a state counts.</summary>
internal static class CycleStates
{
    /// <summary>Change of the states, on their scales, below which a periodic state is settled.</summary>
    public const double Settled = 5e-5;

    /// <summary>One volt, or a milliampere, or a tenth of what is there.</summary>
    public static double Scale(Equations equations, int state, double value)
    {
        var unit = equations.Branches[equations.StorageBranches[state]].Kind == BranchKind.Storage ? 1.0 : 1e-3;
        return unit + (0.1 * Math.Abs(value));
    }
}
