using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Inductor;

internal sealed class InductorModel(InductorPart part) : TwoPinModel(part)
{
    private int ohms;
    private int henries;

    protected override void Lay(CircuitBuilder builder)
    {
        ohms = builder.Equations.NewSlot(part.CopperOhms);
        henries = builder.Equations.NewSlot(part.Henries);
        builder.Equations.AddBranch(BranchKind.Flow, Plus, Minus, ohms, henries);
        builder.Vary(Designator, "copper", 0.05, new SlotChange(ohms, 0.05));
        builder.Vary(Designator, "value", part.Tolerance / 2, new SlotChange(henries, part.Tolerance / 2));
    }

    protected override void Open(double[] slots) => slots[ohms] = 1e12;

    protected override bool Scale(double factor, double[] slots)
    {
        slots[henries] *= factor;
        return true;
    }

    public override IEnumerable<Fault> Faults() => [Whole(FailureMode.Open), Whole(FailureMode.Short)];

    public override PartStress Stress(StressView view)
    {
        var amps = Math.Abs(view.MeanAcross(Plus, Minus)) / view.Slots[ohms];
        return new PartStress(
            Designator,
            amps * amps * view.Slots[ohms],
            double.NaN,
            Math.Max(view.LargestAcross(Plus, Minus), view.LargestAcross(Minus, Plus)),
            double.NaN,
            amps,
            double.NaN
        );
    }
}
