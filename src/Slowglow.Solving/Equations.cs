namespace Slowglow.Solving;

/// <summary>
/// The equations of one structure: unknowns, branches, elements. Numbers live in slots, which every world sets for itself;
/// the structure and its fill-reducing order never change. Immutable.
/// </summary>
public sealed class Equations
{
    internal Equations(int unknowns, int slots, Branch[] branches, Element[] elements, Branch[] strays)
    {
        Unknowns = unknowns;
        Slots = slots;
        Branches = branches;
        Elements = elements;
        Strays = strays;
        StorageBranches = [.. Enumerable.Range(0, branches.Length).Where(b => branches[b].Kind != BranchKind.Conductance)];
        Pattern = SparsePattern.Build(this);
        Uses = new SlotUses(this);
    }

    public int Unknowns { get; }
    public int Slots { get; }
    public IReadOnlyList<Branch> Branches { get; }
    public IReadOnlyList<Element> Elements { get; }

    /// <summary>Capacitances too small to matter to the mains or to a loud signal: only small signals see them. No states.</summary>
    public IReadOnlyList<Branch> Strays { get; }

    /// <summary>Branches that remember: one state each (u of a storage branch, current of a flow branch).</summary>
    public IReadOnlyList<int> StorageBranches { get; }
    internal SparsePattern Pattern { get; }
    internal SlotUses Uses { get; }
}
