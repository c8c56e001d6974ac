using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Optocoupler;

internal sealed class OptocouplerModel(OptocouplerPart part) : DeviceModel(part, part.Device)
{
    /// <summary>An aged LED gives less light: factor on the resistor's ohms (common practice, no source).</summary>
    private const double Dimmed = 4;

    protected override string[] Electrodes => ["a", "k", "ra", "rb"];

    protected override Law Law => new OptocouplerLaw();

    protected override double[] Constants =>
        [
            Device["is"],
            Device["n"],
            Math.Max(Device["rs"], 1e-3),
            Device["ohms"],
            Device["amps"],
            Device["gamma"],
            Device["dark"],
            1,
            1,
        ];

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        key == "ohms" ? new SlotChange(firstSlot + (int)OptocouplerLaw.Constant.Ohms, sigma) : null;

    public override IEnumerable<Fault> Faults() =>
        Sections.Count == 0
            ? []
            :
            [
                new Fault(Designator, "a-k", FailureMode.Open),
                new Fault(Designator, "a-k", FailureMode.Short),
                new Fault(Designator, "ra-rb", FailureMode.Open),
                new Fault(Designator, "ra-rb", FailureMode.Short),
                Whole(FailureMode.Drifted, Dimmed),
            ];

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Open:
                return Open(fault.Where, slots);
            case FailureMode.Drifted when fault.Severity > 0:
                Sections.ForEach(s => slots[s.Slot + (int)OptocouplerLaw.Constant.Ohms] *= fault.Severity);
                return Sections.Count > 0;
            case FailureMode.Short:
            case FailureMode.Leaky when fault.Severity > 0:
                return ApplyShort(fault, slots);
            default:
                return false;
        }
    }

    /// <summary>"" is both halves.</summary>
    private bool Open(string where, double[] slots)
    {
        foreach (var section in Sections)
        {
            if (where is "" or "a-k" or "k-a")
            {
                slots[section.Slot + (int)OptocouplerLaw.Constant.Working] = 0;
            }

            if (where is "" or "ra-rb" or "rb-ra")
            {
                slots[section.Slot + (int)OptocouplerLaw.Constant.Resistor] = 0;
            }
        }

        return Sections.Count > 0 && where is "" or "a-k" or "k-a" or "ra-rb" or "rb-ra";
    }

    public override bool Lift(string pin, double[] slots) =>
        Part.Pins.FirstOrDefault(p => p.Is(pin))?.Electrode switch
        {
            "a" or "k" => Open("a-k", slots),
            "ra" or "rb" => Open("ra-rb", slots),
            _ => false,
        };

    public override PartStress? Stress(StressView view)
    {
        if (Sections.Count == 0)
        {
            return null;
        }

        var amps = view.ElementRmsAmps(Sections[0].Element, 0);
        return new PartStress(
            Designator,
            view.ElementWatts(Sections[0].Element),
            double.NaN,
            double.NaN,
            double.NaN,
            amps,
            amps / Device.Limits.GetValueOrDefault("amps", double.NaN)
        );
    }
}
