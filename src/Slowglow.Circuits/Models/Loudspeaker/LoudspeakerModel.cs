using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Loudspeaker;

/// <summary>Loudspeaker: its copper, and the inductance that brings the impedance to nominal at 1 kHz.</summary>
internal sealed class LoudspeakerModel(LoudspeakerPart part) : TwoPinModel(part)
{
    private int ohms;
    private int henries;

    protected override void Lay(CircuitBuilder builder)
    {
        var reactance = Math.Sqrt(Math.Max(0, (part.NominalOhms * part.NominalOhms) - (part.DcOhms * part.DcOhms)));
        ohms = builder.Equations.NewSlot(part.DcOhms);
        henries = builder.Equations.NewSlot(reactance / (2 * Math.PI * 1000));
        builder.Equations.AddBranch(BranchKind.Flow, Plus, Minus, ohms, henries);
        builder.Vary(Designator, "copper", 0.05, new SlotChange(ohms, 0.05));
    }

    public override void Stand(Setup setup, double[] slots)
    {
        if (setup.LoadOhms is { } load)
        {
            slots[ohms] = double.IsFinite(load) ? load : 1e12;
            slots[henries] = 0;
        }
    }

    protected override void Open(double[] slots) => slots[ohms] = 1e12;

    public override IEnumerable<Fault> Faults() => [Whole(FailureMode.Open), Whole(FailureMode.Short)];

    public override PartStress Stress(StressView view)
    {
        var amps = view.FlowRmsAmps(Plus, Minus, view.Slots[ohms], view.Slots[henries]);
        var watts = amps * amps * view.Slots[ohms];
        return new PartStress(
            Designator,
            watts,
            watts / part.RatedWatts,
            Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus)),
            double.NaN,
            amps,
            double.NaN
        );
    }
}
