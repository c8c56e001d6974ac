namespace Slowglow.Solving;

/// <summary>Which branch or element constant a slot belongs to, for the effect of a parameter on the equations.</summary>
internal sealed class ParameterMap
{
    internal enum Use
    {
        None,
        Siemens,
        SteadySource,
        SwingSource,
        Farads,
        FlowOhms,
        Henries,
        Constant,
    }

    private readonly (Use Use, int Index, int Constant)[] uses;

    public ParameterMap(Equations equations)
    {
        uses = new (Use, int, int)[equations.Slots];
        for (var b = 0; b < equations.Branches.Count; b++)
        {
            AddBranch(equations.Branches[b], b);
        }

        for (var e = 0; e < equations.Elements.Count; e++)
        {
            for (var c = 0; c < equations.Elements[e].Law.Constants; c++)
            {
                uses[equations.Elements[e].Slot + c] = (Use.Constant, e, c);
            }
        }
    }

    public (Use Use, int Index, int Constant) this[int slot] => uses[slot];

    private void AddBranch(Branch branch, int index)
    {
        uses[branch.Slot] = branch.Kind switch
        {
            BranchKind.Conductance => (Use.Siemens, index, 0),
            BranchKind.Storage => (Use.Farads, index, 0),
            _ => (Use.FlowOhms, index, 0),
        };
        if (branch.SteadySlot >= 0)
        {
            uses[branch.SteadySlot] = (branch.Kind == BranchKind.Flow ? Use.Henries : Use.SteadySource, index, 0);
        }

        if (branch.SwingSlot >= 0)
        {
            uses[branch.SwingSlot] = (Use.SwingSource, index, 0);
        }
    }
}
