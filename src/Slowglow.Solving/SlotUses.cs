namespace Slowglow.Solving;

/// <summary>The branches and elements whose numbers a slot holds.</summary>
internal sealed class SlotUses
{
    private readonly int[][] branches;
    private readonly int[][] elements;

    public SlotUses(Equations equations)
    {
        var (byBranch, byElement) = (Lists(equations.Slots), Lists(equations.Slots));
        for (var b = 0; b < equations.Branches.Count; b++)
        {
            var branch = equations.Branches[b];
            foreach (var slot in new[] { branch.Slot, branch.SteadySlot, branch.SwingSlot }.Where(s => s >= 0))
            {
                byBranch[slot].Add(b);
            }
        }

        for (var e = 0; e < equations.Elements.Count; e++)
        {
            for (var c = 0; c < equations.Elements[e].Law.Constants; c++)
            {
                byElement[equations.Elements[e].Slot + c].Add(e);
            }
        }

        (branches, elements) = ([.. byBranch.Select(l => l.ToArray())], [.. byElement.Select(l => l.ToArray())]);
    }

    public ReadOnlySpan<int> Branches(int slot) => branches[slot];

    public ReadOnlySpan<int> Elements(int slot) => elements[slot];

    private static List<int>[] Lists(int count) => [.. Enumerable.Range(0, count).Select(_ => new List<int>())];
}
