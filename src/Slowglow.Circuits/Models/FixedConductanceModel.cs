using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Models;

/// <summary>Parts that are a plain resistance: fuse, lamp, wire, contact, loudspeaker's stand-in, unknown.</summary>
internal abstract class FixedConductanceModel(Part part) : TwoPinModel(part)
{
    protected int Slot { get; private set; }

    protected abstract double Siemens { get; }

    /// <summary>Siemens with the bench as it stands.</summary>
    protected virtual double SiemensIn(Setup setup) => Siemens;

    protected override void Lay(CircuitBuilder builder) => Slot = builder.Conductance(Plus, Minus, Siemens);

    public override void Stand(Setup setup, double[] slots) => slots[Slot] = SiemensIn(setup);

    protected override void Open(double[] slots) => slots[Slot] = CircuitBuilder.OpenSiemens;

    /// <summary>Puts ohms in series with what it is.</summary>
    protected void AddOhms(double ohms, double[] slots) => slots[Slot] = 1 / ((1 / slots[Slot]) + ohms);

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Mode != FailureMode.BadContact || fault.Severity <= 0)
        {
            return base.Apply(fault, slots);
        }

        AddOhms(fault.Severity, slots);
        return true;
    }

    public override IEnumerable<Fault> Faults() => [Whole(FailureMode.Open)];

    /// <summary>What happens to anything that two pieces of metal make by touching.</summary>
    protected IEnumerable<Fault> BadContacts(IEnumerable<double> grid) =>
        grid.Select(ohms => Whole(FailureMode.BadContact, ohms));

    protected PartStress StressOf(StressView view, double ratedAmps, double ratedWatts)
    {
        var square = view.MeanSquareAcross(Plus, Minus);
        var amps = Math.Sqrt(square) * view.Slots[Slot];
        var watts = square * view.Slots[Slot];
        return new PartStress(
            Designator,
            watts,
            watts / ratedWatts,
            Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus)),
            double.NaN,
            amps,
            amps / ratedAmps
        );
    }

    public override PartStress? Stress(StressView view) => StressOf(view, double.NaN, Part.RatedWatts);
}
