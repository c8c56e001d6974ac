namespace Slowglow.Solving;

/// <summary>A branch at rest in one world: what it conducts and the current its own source drives.</summary>
internal static class RestBranch
{
    /// <summary>Siemens; a storage branch is open, a flow branch its resistance.</summary>
    public static double Siemens(Branch branch, double[] slots) =>
        branch.Kind switch
        {
            BranchKind.Conductance => slots[branch.Slot],
            BranchKind.Storage => 0,
            _ => 1 / slots[branch.Slot],
        };

    /// <summary>Amperes that its source drives into its rows, with the sine at <paramref name="swing"/>.</summary>
    public static double SourceAmps(Branch branch, double[] slots, double swing)
    {
        if (branch.Kind != BranchKind.Conductance)
        {
            return 0;
        }

        var volts = branch.SteadySlot >= 0 ? slots[branch.SteadySlot] : 0;
        return slots[branch.Slot] * (branch.SwingSlot >= 0 ? volts + (swing * slots[branch.SwingSlot]) : volts);
    }

    public static double Across(Branch branch, double[] x)
    {
        double sum = 0;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            sum += branch.Weights[k] * x[branch.Rows[k]];
        }

        return sum;
    }
}
