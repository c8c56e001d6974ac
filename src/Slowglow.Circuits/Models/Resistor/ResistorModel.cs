using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Resistor;

internal sealed class ResistorModel(ResistorPart part) : TwoPinModel(part)
{
    private int slot;

    protected override void Lay(CircuitBuilder builder)
    {
        slot = builder.Conductance(Plus, Minus, 1 / part.Ohms);
        builder.Vary(Designator, "value", part.Tolerance / 2, new SlotChange(slot, -part.Tolerance / 2));
    }

    protected override void Open(double[] slots) => slots[slot] = CircuitBuilder.OpenSiemens;

    protected override bool Scale(double factor, double[] slots)
    {
        slots[slot] /= factor;
        return true;
    }

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Mode != FailureMode.Short)
        {
            return base.Apply(fault, slots);
        }

        // A short must also be one beside a fraction of an ohm.
        slots[LeakSlot] = Math.Max(CircuitBuilder.ShortSiemens, 50 / part.Ohms);
        return true;
    }

    public override IEnumerable<Fault> Faults() =>
        [
            Whole(FailureMode.Open),
            Whole(FailureMode.Short),
            .. Severities.Up.Select(s => Whole(FailureMode.Drifted, s)),
            .. Severities.Down.Select(s => Whole(FailureMode.Drifted, s)),
            .. Severities.FittedOhms.Select(s => Whole(FailureMode.WrongValue, s)),
        ];

    public override PartStress Stress(StressView view)
    {
        var watts = view.MeanSquareAcross(Plus, Minus) * view.Slots[slot];
        return new PartStress(
            Designator,
            watts,
            watts / part.RatedWatts,
            Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus)),
            double.NaN,
            Math.Sqrt(view.MeanSquareAcross(Plus, Minus)) * view.Slots[slot],
            double.NaN
        );
    }
}
