using System.Numerics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Which branch or element each slot belongs to.</summary>
internal sealed class SlotOwners
{
    private readonly Equations equations;
    private readonly int[] branchOf;
    private readonly int[] elementOf;

    public SlotOwners(Equations equations)
    {
        this.equations = equations;
        branchOf = new int[equations.Slots];
        elementOf = new int[equations.Slots];
        Array.Fill(branchOf, -1);
        Array.Fill(elementOf, -1);
        for (var b = 0; b < equations.Branches.Count; b++)
        {
            branchOf[equations.Branches[b].Slot] = b;
        }

        for (var e = 0; e < equations.Elements.Count; e++)
        {
            for (var c = 0; c < equations.Elements[e].Law.Constants; c++)
            {
                elementOf[equations.Elements[e].Slot + c] = e;
            }
        }
    }

    /// <summary>The branch whose main value stands in the slot; null when none does.</summary>
    public Branch? BranchAt(int slot) => branchOf[slot] < 0 ? null : equations.Branches[branchOf[slot]];

    /// <summary>The element whose law has a constant in the slot; null when none does.</summary>
    public Element? ElementAt(int slot) => elementOf[slot] < 0 ? null : equations.Elements[elementOf[slot]];

    /// <summary>First-order change of a small-signal answer when a slot moves, the operating point held.</summary>
    public Complex Effect(SmallSignalSolver signal, SlotChange change, double frequency, Complex[] x, Complex[] adjoint)
    {
        if (branchOf[change.Slot] >= 0)
        {
            return signal.BranchEffect(branchOf[change.Slot], change.Relative, frequency, x, adjoint);
        }

        return elementOf[change.Slot] >= 0 ? signal.ConstantEffect(elementOf[change.Slot], change, x, adjoint) : 0;
    }
}
