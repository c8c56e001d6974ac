namespace Slowglow.Solving;

/// <summary>Collects the structure of <see cref="Equations"/>.</summary>
public sealed class EquationsBuilder
{
    private readonly List<Branch> branches = [];
    private readonly List<Element> elements = [];
    private readonly List<Branch> strays = [];
    private readonly List<double> slots = [];

    public int Unknowns { get; private set; }

    /// <summary>A new unknown.</summary>
    public int NewUnknown() => Unknowns++;

    /// <summary>A new slot with the value that an undisturbed world gives it.</summary>
    public int NewSlot(double value)
    {
        slots.Add(value);
        return slots.Count - 1;
    }

    /// <summary>Values of all slots as declared.</summary>
    public double[] SlotValues() => [.. slots];

    /// <summary>Adds a branch between two unknowns (-1 = ground) and returns its index.</summary>
    public int AddBranch(BranchKind kind, int plus, int minus, int slot, int steadySlot = -1, int swingSlot = -1) =>
        AddBranch(kind, [plus, minus], [1, -1], slot, steadySlot, swingSlot);

    /// <summary>Adds a branch with weights; entries at ground are dropped, entries of one unknown are summed.</summary>
    public int AddBranch(BranchKind kind, int[] rows, double[] weights, int slot, int steadySlot = -1, int swingSlot = -1)
    {
        branches.Add(Merged(kind, rows, weights, slot, steadySlot, swingSlot));
        return branches.Count - 1;
    }

    /// <summary>Adds a capacitance that only small signals see; both ends must be terminals of one element (-1 = ground).</summary>
    public void AddStray(int plus, int minus, int slot) =>
        strays.Add(Merged(BranchKind.Storage, [plus, minus], [1, -1], slot, -1, -1));

    private static Branch Merged(BranchKind kind, int[] rows, double[] weights, int slot, int steadySlot, int swingSlot)
    {
        var merged = new SortedDictionary<int, double>();
        for (var k = 0; k < rows.Length; k++)
        {
            if (rows[k] >= 0)
            {
                merged[rows[k]] = merged.GetValueOrDefault(rows[k]) + weights[k];
            }
        }

        return new Branch(kind, [.. merged.Keys], [.. merged.Values], slot, steadySlot, swingSlot);
    }

    /// <summary>Adds a nonlinear element; terminals in the law's order, the reference last (-1 = ground).</summary>
    public int AddElement(Law law, int[] rows, int firstSlot)
    {
        elements.Add(new Element(law, rows, firstSlot));
        return elements.Count - 1;
    }

    public Equations Build() => new(Unknowns, slots.Count, [.. branches], [.. elements], [.. strays]);
}
