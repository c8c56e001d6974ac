using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Models;

/// <summary>A part made solvable. One class a kind, in the folder of its name; everything else of the room asks through this.</summary>
internal abstract class PartModel(Part part)
{
    public Part Part { get; } = part;
    public string Designator => Part.Designator;

    /// <summary>Lays the part's branches, elements, slots and random parameters.</summary>
    public abstract void Build(CircuitBuilder builder);

    /// <summary>All single faults the model can compute, soft ones over a grid of severities.</summary>
    public abstract IEnumerable<Fault> Faults();

    /// <summary>Sets slots as the fault has them; false when the model does not know it.</summary>
    public abstract bool Apply(Fault fault, double[] slots);

    /// <summary>Sets slots as the bench stands: switches, rotations, valves pulled, power off.</summary>
    public virtual void Stand(Setup setup, double[] slots) { }

    /// <summary>Opens the leg on a pin (number or electrode); false when there is no such leg to lift.</summary>
    public virtual bool Lift(string pin, double[] slots) => false;

    /// <summary>True for parts whose slots follow the solved cycle: a heater's warmth, a relay's contacts, a regulator valve's glow.</summary>
    public virtual bool Follows => false;

    /// <summary>Sets, in the view's slots, what the cycle just solved makes of the part; true when the world must be solved again.</summary>
    public virtual bool Follow(StressView view) => false;

    /// <summary>What the part stands in a world; null when there is nothing to say.</summary>
    public virtual PartStress? Stress(StressView view) => null;

    protected Fault Whole(FailureMode mode, double severity = 0) => new(Designator, "", mode, severity);
}
