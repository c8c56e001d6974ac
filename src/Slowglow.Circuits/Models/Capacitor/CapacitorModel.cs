using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Capacitor;

internal sealed class CapacitorModel(CapacitorPart part) : TwoPinModel(part)
{
    private int slot;
    private bool IsElectrolytic => part.Style is CapacitorStyle.Electrolytic or CapacitorStyle.Tantalum or CapacitorStyle.Bipolar;

    protected override void Lay(CircuitBuilder builder)
    {
        slot = builder.Equations.NewSlot(part.Farads);
        builder.Equations.AddBranch(BranchKind.Storage, Plus, Minus, slot);

        // Small capacitors carry no supply ripple worth a spread.
        if (part.Farads >= 0.9e-6)
        {
            builder.Vary(Designator, "value", part.Tolerance / 2, new SlotChange(slot, part.Tolerance / 2));
        }
    }

    /// <summary>A trace is left, so that the net keeps its state.</summary>
    protected override void Open(double[] slots) => slots[slot] = 1e-15;

    protected override bool Scale(double factor, double[] slots)
    {
        slots[slot] *= factor;
        return true;
    }

    public override bool Apply(Fault fault, double[] slots) =>
        fault.Mode == FailureMode.DriedOut && fault.Severity > 0 ? Scale(fault.Severity, slots) : base.Apply(fault, slots);

    public override IEnumerable<Fault> Faults()
    {
        yield return Whole(FailureMode.Open);
        yield return Whole(FailureMode.Short);
        foreach (var ohms in IsElectrolytic ? Severities.ElectrolyticLeak : Severities.FilmLeak)
        {
            yield return Whole(FailureMode.Leaky, ohms);
        }

        if (IsElectrolytic)
        {
            foreach (var left in Severities.Dried)
            {
                yield return Whole(FailureMode.DriedOut, left);
            }
        }
    }

    public override PartStress Stress(StressView view)
    {
        var volts = Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus));
        var watts = view.MeanSquareAcross(Plus, Minus) * view.Slots[LeakSlot];
        return new PartStress(Designator, watts, double.NaN, volts, volts / part.RatedVolts, double.NaN, double.NaN);
    }
}
