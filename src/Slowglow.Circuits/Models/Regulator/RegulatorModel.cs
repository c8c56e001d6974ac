using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Regulator;

internal sealed class RegulatorModel(RegulatorPart part) : DeviceModel(part, part.Device)
{
    private string Reference => Device.Pinout.Any(p => p.Electrode == "adj") ? "adj" : "gnd";

    protected override string[] Electrodes => ["in", "out", Reference];

    protected override Law Law => new RegulatorLaw();

    protected override double[] Constants =>
        [
            Device["polarity"],
            Math.Abs(Device["volts"]),
            Device["dropout"],
            Device["limit"],
            Device["iq"],
            Math.Max(Device["rout"], 1e-3),
            1,
        ];

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        key switch
        {
            "volts" => new SlotChange(firstSlot + (int)RegulatorLaw.Constant.Volts, sigma),
            "iq" => new SlotChange(firstSlot + (int)RegulatorLaw.Constant.StandingAmps, sigma),
            "dropout" => new SlotChange(firstSlot + (int)RegulatorLaw.Constant.DropoutVolts, sigma),
            _ => null,
        };

    public override IEnumerable<Fault> Faults() =>
        [
            Whole(FailureMode.Dead),
            Whole(FailureMode.StuckHigh),
            Whole(FailureMode.Drifted, 0.7),
            new Fault(Designator, $"out-{Reference}", FailureMode.Short),
        ];

    public override bool Apply(Fault fault, double[] slots)
    {
        foreach (var section in Sections)
        {
            switch (fault.Mode)
            {
                case FailureMode.Dead or FailureMode.Open:
                    slots[section.Slot + (int)RegulatorLaw.Constant.Working] = 0;
                    break;
                case FailureMode.StuckHigh:
                    slots[section.Slot + (int)RegulatorLaw.Constant.Volts] = 1e3;
                    break;
                case FailureMode.Drifted when fault.Severity > 0:
                    slots[section.Slot + (int)RegulatorLaw.Constant.Volts] *= fault.Severity;
                    break;
                case FailureMode.Short or FailureMode.Leaky:
                    return ApplyShort(fault, slots);
                default:
                    return false;
            }
        }

        return Sections.Count > 0;
    }

    public override PartStress? Stress(StressView view)
    {
        if (Sections.Count == 0)
        {
            return null;
        }

        var section = Sections[0];
        var watts = view.ElementWatts(section.Element);
        var volts = view.LargestAcross(section.Rows[0], section.Rows[2]);
        var amps = view.ElementRmsAmps(section.Element, 1);
        return new PartStress(
            Designator,
            watts,
            watts / Device.Limits.GetValueOrDefault("watts", double.NaN),
            volts,
            volts / Device.Limits.GetValueOrDefault("inputVolts", double.NaN),
            amps,
            amps / Device["limit"]
        );
    }
}
