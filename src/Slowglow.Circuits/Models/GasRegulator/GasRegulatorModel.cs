using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.GasRegulator;

/// <summary>
/// A gas-filled regulator valve. It is dark until the volts across it, without it, reach its striking volts; then it glows at its
/// maintaining volts, unless what is left to it cannot keep it alight.
/// </summary>
internal sealed class GasRegulatorModel(ValvePart part) : DeviceModel(part, part.Device)
{
    /// <summary>Fraction of its least rated current below which the glow goes out (common practice, no source).</summary>
    private const double GoesOut = 0.1;

    /// <summary>How it stands, in a slot that belongs to no branch.</summary>
    private int state;

    private enum State
    {
        Dark,
        Glowing,

        /// <summary>Glows on too little: what is below it may have yet to strike, so it is given one turn.</summary>
        Fading,

        /// <summary>Struck, but could not stay alight; or cannot strike at all.</summary>
        Out,
    }

    protected override string[] Electrodes => ["a", "k"];

    protected override Law Law => new GasRegulatorLaw();

    protected override double[] Constants => [Device["volts"], Device["ohms"], 0];

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        key == "volts" ? new SlotChange(firstSlot + (int)GasRegulatorLaw.Constant.MaintainingVolts, sigma) : null;

    public override void Build(CircuitBuilder builder)
    {
        base.Build(builder);
        state = builder.Equations.NewSlot((double)State.Dark);
    }

    public override void Stand(Setup setup, double[] slots)
    {
        if (setup.ValvesOut || setup.Pulled.Contains(Designator))
        {
            slots[state] = (double)State.Out;
        }
    }

    public override IEnumerable<Fault> Faults() =>
        Sections.Count == 0
            ? []
            :
            [
                Whole(FailureMode.Dead),
                new Fault(Designator, "a-k", FailureMode.Short),
                Whole(FailureMode.Drifted, 0.9),
                Whole(FailureMode.Drifted, 1.1),
            ];

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Dead or FailureMode.Open:
                slots[state] = (double)State.Out;
                return true;
            case FailureMode.Drifted when fault.Severity > 0:
                Sections.ForEach(s => slots[s.Slot + (int)GasRegulatorLaw.Constant.MaintainingVolts] *= fault.Severity);
                return true;
            case FailureMode.Short:
            case FailureMode.Leaky when fault.Severity > 0:
                return ApplyShort(fault, slots);
            default:
                return false;
        }
    }

    public override bool Follows => Sections.Count > 0;

    public override bool Follow(StressView view)
    {
        var section = Sections[0];
        var now = (State)view.Slots[state];
        var next = now switch
        {
            State.Dark when view.LargestAcross(section.Rows[0], section.Rows[1]) >= Device["strike"] => State.Glowing,
            State.Glowing when Starved(view, section) => State.Fading,
            State.Fading => Starved(view, section) ? State.Out : State.Glowing,
            _ => now,
        };
        view.Slots[state] = (double)next;
        view.Slots[section.Slot + (int)GasRegulatorLaw.Constant.Glow] = next is State.Glowing or State.Fading ? 1 : 0;

        // From fading back to glowing nothing changes.
        return next != now && (now, next) != (State.Fading, State.Glowing);
    }

    private bool Starved(StressView view, SectionInPlace section) =>
        view.ElementMeanAmps(section.Element, 0) < GoesOut * Device["least"];

    public override PartStress? Stress(StressView view)
    {
        if (Sections.Count == 0)
        {
            return null;
        }

        var section = Sections[0];
        var amps = view.ElementRmsAmps(section.Element, 0);
        return new PartStress(
            Designator,
            view.ElementWatts(section.Element),
            double.NaN,
            view.LargestAcross(section.Rows[0], section.Rows[1]),
            double.NaN,
            amps,
            amps / Device.Limits.GetValueOrDefault("amps", double.NaN)
        );
    }
}
