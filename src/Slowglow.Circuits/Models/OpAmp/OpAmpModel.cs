using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.OpAmp;

internal sealed class OpAmpModel(OpAmpPart part) : DeviceModel(part, part.Device)
{
    /// <summary>Short-circuit current of an op-amp whose data do not say (common practice, no source).</summary>
    private const double UsualLimitAmps = 0.025;

    /// <summary>Spread of what an output leaves to its supplies (common practice, no source).</summary>
    private const double RoomSpread = 0.2;

    private readonly HashSet<int> idle = [];

    protected override string[] Electrodes => ["in+", "in-", "out", "v+", "v-"];

    protected override Law Law => new OpAmpLaw();

    protected override double[] Constants =>
        [
            Device["gain"],
            Device["rout"],
            Device["roomHigh"],
            Device["roomLow"],
            Device["iq"],
            Device["ib"],
            0,
            Device["gbw"] / Device["gain"],
            0,
            Device.Limits.GetValueOrDefault("amps", UsualLimitAmps),
        ];

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        key switch
        {
            "iq" => new SlotChange(firstSlot + (int)OpAmpLaw.Constant.StandingAmps, sigma),
            "ib" => new SlotChange(firstSlot + (int)OpAmpLaw.Constant.BiasAmps, sigma),
            "vos" => new SlotChange(firstSlot + (int)OpAmpLaw.Constant.OffsetVolts, 0, Device["vos"]),
            _ => null,
        };

    public override void Build(CircuitBuilder builder)
    {
        base.Build(builder);
        VaryRoom(builder);
        if (!Device.Spread.ContainsKey("vos") && Device.Law.TryGetValue("vos", out var offset))
        {
            foreach (var section in Sections)
            {
                builder.Vary(
                    Designator,
                    $"offset of section {section.Number}",
                    offset,
                    new SlotChange(section.Slot + (int)OpAmpLaw.Constant.OffsetVolts, 0, offset)
                );
            }
        }
    }

    /// <summary>What the outputs of a package leave to the supplies moves together.</summary>
    private void VaryRoom(CircuitBuilder builder)
    {
        int[] rooms = [(int)OpAmpLaw.Constant.RoomHigh, (int)OpAmpLaw.Constant.RoomLow];
        builder.Vary(
            Designator,
            "room to the supplies",
            RoomSpread,
            [.. Sections.SelectMany(s => rooms, (s, r) => new SlotChange(s.Slot + r, RoomSpread))]
        );
    }

    /// <summary>
    /// A section of the package whose output goes nowhere has its open inputs on chassis: it takes its standing current and disturbs nothing. Left open,
    /// its bias currents would have nowhere to go.
    /// </summary>
    protected override Dictionary<string, string> Wired(CircuitBuilder builder, int section, Dictionary<string, string> nets)
    {
        if (builder.IsShared(nets["out"]) || builder.IsShared(nets["in-"]))
        {
            return nets;
        }

        idle.Add(section);
        return new(nets) { ["in+"] = builder.IsShared(nets["in+"]) ? nets["in+"] : NetTable.Ground, ["in-"] = NetTable.Ground };
    }

    /// <summary>A dead section is one whose output is open; a whole package is dead when a supply pin makes no joint.</summary>
    public override IEnumerable<Fault> Faults() =>
        [
            .. Sections
                .Where(s => !idle.Contains(s.Number))
                .SelectMany(s =>
                    new[] { FailureMode.StuckHigh, FailureMode.StuckLow, FailureMode.Dead }.Select(m => new Fault(
                        Designator,
                        NameOf(s),
                        m
                    ))
                ),
            .. Sections.Count > 1 ? [Whole(FailureMode.Dead)] : Array.Empty<Fault>(),
        ];

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Mode is FailureMode.Short || (fault.Mode == FailureMode.Leaky && fault.Severity > 0))
        {
            return ApplyShort(fault, slots);
        }

        foreach (var (section, _) in Named(fault.Where))
        {
            switch (fault.Mode)
            {
                case FailureMode.StuckHigh:
                    slots[section.Slot + (int)OpAmpLaw.Constant.Stuck] = 1;
                    break;
                case FailureMode.StuckLow:
                    slots[section.Slot + (int)OpAmpLaw.Constant.Stuck] = -1;
                    break;
                case FailureMode.Dead or FailureMode.Open:
                    slots[section.Slot + (int)OpAmpLaw.Constant.OutputOhms] = 1e9;
                    slots[section.Slot + (int)OpAmpLaw.Constant.StandingAmps] = 0;
                    slots[section.Slot + (int)OpAmpLaw.Constant.BiasAmps] = 0;
                    break;
                default:
                    return false;
            }
        }

        return true;
    }

    public override PartStress? Stress(StressView view)
    {
        if (Sections.Count == 0)
        {
            return null;
        }

        var watts = Sections.Sum(s => view.ElementWatts(s.Element));
        var volts = view.LargestAcross(Sections[0].Rows[3], Sections[0].Rows[4]);
        return new PartStress(
            Designator,
            watts,
            watts / Device.Limits.GetValueOrDefault("watts", double.NaN),
            volts,
            volts / Device.Limits.GetValueOrDefault("volts", double.NaN),
            Sections.Max(s => view.ElementRmsAmps(s.Element, 2)),
            double.NaN
        );
    }
}
