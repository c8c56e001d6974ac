using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts;

namespace Slowglow.Circuits.Models;

/// <summary>Something between two pins with a leak or short across it in a slot of its own.</summary>
internal abstract class TwoPinModel(Part part) : PartModel(part)
{
    protected int Plus { get; private set; }
    protected int Minus { get; private set; }

    /// <summary>Siemens across the part that should not be there.</summary>
    protected int LeakSlot { get; private set; }

    public override void Build(CircuitBuilder builder)
    {
        Plus = builder.Row(Part.Pins[0].Net);
        Minus = builder.Row(Part.Pins[1].Net);
        Lay(builder);
        LeakSlot = builder.Conductance(Plus, Minus, CircuitBuilder.OpenSiemens);
    }

    protected abstract void Lay(CircuitBuilder builder);

    /// <summary>Takes the part itself out of the circuit.</summary>
    protected abstract void Open(double[] slots);

    /// <summary>Changes the value by a factor; false when the part has none.</summary>
    protected virtual bool Scale(double factor, double[] slots) => false;

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Open:
                Open(slots);
                return true;
            case FailureMode.Short:
                slots[LeakSlot] = CircuitBuilder.ShortSiemens;
                return true;
            case FailureMode.Leaky when fault.Severity > 0:
                slots[LeakSlot] = 1 / fault.Severity;
                return true;
            case FailureMode.Drifted or FailureMode.WrongValue when fault.Severity > 0:
                return Scale(fault.Severity, slots);
            default:
                return false;
        }
    }

    public override bool Lift(string pin, double[] slots)
    {
        if (!Part.Pins.Any(p => p.Is(pin)))
        {
            return false;
        }

        Open(slots);
        slots[LeakSlot] = CircuitBuilder.OpenSiemens;
        return true;
    }
}
