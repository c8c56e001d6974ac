using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Inductor;

internal sealed class InductorModel(InductorPart part) : TwoPinModel(part)
{
    /// <summary>From here up a coil has iron in it, and many layers.</summary>
    private const double ChokeHenries = 0.1;
    private const double ShortedTurns = 0.1;
    private const string ToCore = "to core";
    private int ohms;
    private int henries;

    /// <summary>Slot of the siemens from a choke's winding to its core; -1 when an end is at chassis anyway.</summary>
    private int toCore = -1;

    protected override void Lay(CircuitBuilder builder)
    {
        ohms = builder.Equations.NewSlot(part.CopperOhms);
        henries = builder.Equations.NewSlot(part.Henries);
        builder.Equations.AddBranch(BranchKind.Flow, Plus, Minus, ohms, henries);
        if (part.Henries >= ChokeHenries && Plus >= 0 && Minus >= 0)
        {
            toCore = builder.Conductance(Plus, -1, CircuitBuilder.OpenSiemens);
        }

        builder.Vary(Designator, "copper", 0.05, new SlotChange(ohms, 0.05));
        builder.Vary(Designator, "value", part.Tolerance / 2, new SlotChange(henries, part.Tolerance / 2));
    }

    protected override void Open(double[] slots) => slots[ohms] = 1e12;

    protected override bool Scale(double factor, double[] slots)
    {
        slots[henries] *= factor;
        return true;
    }

    /// <summary>A choke with shorted turns keeps most of its copper and little of its inductance (common practice, no source).</summary>
    public override IEnumerable<Fault> Faults()
    {
        yield return Whole(FailureMode.Open);
        yield return Whole(FailureMode.Short);
        if (part.Henries >= ChokeHenries)
        {
            yield return Whole(FailureMode.Drifted, ShortedTurns);
        }

        if (toCore >= 0)
        {
            yield return new Fault(Designator, ToCore, FailureMode.Short);
            foreach (var leak in Severities.InsulationLeak)
            {
                yield return new Fault(Designator, ToCore, FailureMode.Leaky, leak);
            }
        }
    }

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Where != ToCore)
        {
            return base.Apply(fault, slots);
        }

        if (toCore < 0 || fault.Mode is not (FailureMode.Short or FailureMode.Leaky))
        {
            return false;
        }

        slots[toCore] = fault.Mode == FailureMode.Short ? CircuitBuilder.ShortSiemens : 1 / fault.Severity;
        return true;
    }

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
