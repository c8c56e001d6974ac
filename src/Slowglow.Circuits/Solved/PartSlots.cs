using Slowglow.Circuits.Building;
using Slowglow.Circuits.Models;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Which part each branch and element of a circuit belongs to. The parts are laid once more on a spare builder, and the slots that each
/// one takes are counted.
/// </summary>
internal sealed class PartSlots
{
    private readonly string[] ownerOf;
    private readonly Circuit circuit;
    private readonly ILookup<string, int> branches;
    private readonly ILookup<string, int> elements;

    public PartSlots(Circuit circuit)
    {
        this.circuit = circuit;
        var spare = new CircuitBuilder(circuit.Sheet);
        List<string> owners = [];
        foreach (var part in circuit.Sheet.Parts)
        {
            ModelOf.Part(part, circuit.Sheet)?.Build(spare);
            var now = spare.Equations.SlotValues().Length;
            owners.AddRange(Enumerable.Repeat(part.Designator, now - owners.Count));
        }

        // What is left was laid by the bench: mains, generators, loads.
        owners.AddRange(Enumerable.Repeat("", circuit.Equations.Slots - owners.Count));
        ownerOf = [.. owners];
        branches = Enumerable.Range(0, circuit.Equations.Branches.Count).ToLookup(b => OfBranch(b));
        elements = Enumerable.Range(0, circuit.Equations.Elements.Count).ToLookup(e => OfElement(e));
    }

    /// <summary>Designator; "" for what the bench connects.</summary>
    public string OfBranch(int branch) => ownerOf[circuit.Equations.Branches[branch].Slot];

    public string OfElement(int element) => ownerOf[circuit.Equations.Elements[element].Slot];

    public IEnumerable<int> BranchesOf(string part) => branches[part];

    public IEnumerable<int> ElementsOf(string part) => elements[part];

    /// <summary>"V1 section 2" of a part with several sections, "Q3" of one with a single one.</summary>
    public string NameOfElement(int element)
    {
        var part = OfElement(element);
        int[] all = [.. elements[part]];
        var model = circuit.Models.OfType<DeviceModel>().FirstOrDefault(m => m.Designator == part);
        var number = model?.SectionNumbers.ElementAtOrDefault(Array.IndexOf(all, element)) ?? 0;
        return number > 1 || (number == 1 && all.Length > 1) ? FormattableString.Invariant($"{part} section {number}") : part;
    }

    /// <summary>Index of the branch whose main value stands in a slot.</summary>
    public int BranchAt(int slot)
    {
        var all = circuit.Equations.Branches;
        for (var b = 0; b < all.Count; b++)
        {
            if (all[b].Slot == slot)
            {
                return b;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(slot), slot, "no branch keeps its value there");
    }
}
