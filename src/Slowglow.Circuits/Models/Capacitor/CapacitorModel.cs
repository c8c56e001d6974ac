using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Capacitor;

internal sealed class CapacitorModel(CapacitorPart part) : TwoPinModel(part)
{
    /// <summary>Small capacitors carry no supply ripple worth a spread, and have no series resistance worth a fault.</summary>
    private const double LargeFarads = 0.9e-6;

    /// <summary>Value that a film or ceramic capacitor has lost its way to (common practice, no source).</summary>
    private const double Faded = 0.4;
    private readonly bool isElectrolytic =
        part.Style is CapacitorStyle.Electrolytic or CapacitorStyle.Tantalum or CapacitorStyle.Bipolar;
    private int slot;

    /// <summary>Slot of the siemens in series with a large electrolytic; -1 when it has none.</summary>
    private int series = -1;

    protected override void Lay(CircuitBuilder builder)
    {
        slot = builder.Equations.NewSlot(part.Farads);
        var plate = Plus;
        if (isElectrolytic && part.Farads >= LargeFarads)
        {
            plate = builder.Equations.NewUnknown();
            series = builder.Conductance(Plus, plate, ElectrolyteWear.GoodSiemens);
        }

        builder.Equations.AddBranch(BranchKind.Storage, plate, Minus, slot);
        if (part.Farads >= LargeFarads)
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

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.DriedOut when fault.Severity > 0:
                DryOut(fault.Severity, slots);
                return true;
            case FailureMode.Backwards when isElectrolytic:
                slots[LeakSlot] = 1 / ElectrolyteWear.ReversedOhms(part.Farads, part.RatedVolts);
                return true;
            default:
                return base.Apply(fault, slots);
        }
    }

    private void DryOut(double left, double[] slots)
    {
        slots[slot] *= left;
        if (series >= 0)
        {
            slots[series] = 1 / ElectrolyteWear.SeriesOhms(part.Farads, left);
        }
    }

    public override IEnumerable<Fault> Faults() =>
        [Whole(FailureMode.Open), Whole(FailureMode.Short), .. isElectrolytic ? OfElectrolytic() : OfOthers()];

    private IEnumerable<Fault> OfElectrolytic() =>
        [
            .. Severities.ElectrolyticLeak.Select(ohms => Whole(FailureMode.Leaky, ohms)),
            .. Severities.Dried.Select(left => Whole(FailureMode.DriedOut, left)),
            .. part.Style == CapacitorStyle.Bipolar ? Array.Empty<Fault>() : [Whole(FailureMode.Backwards)],
        ];

    private IEnumerable<Fault> OfOthers() =>
        [
            .. Severities.FilmLeak.Select(ohms => Whole(FailureMode.Leaky, ohms)),
            Whole(FailureMode.Drifted, Faded),
            .. Severities.FittedFarads.Select(factor => Whole(FailureMode.WrongValue, factor)),
        ];

    public override PartStress Stress(StressView view)
    {
        var volts = Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus));
        var watts = view.MeanSquareAcross(Plus, Minus) * view.Slots[LeakSlot];
        return new PartStress(Designator, watts, double.NaN, volts, volts / part.RatedVolts, double.NaN, double.NaN);
    }
}
