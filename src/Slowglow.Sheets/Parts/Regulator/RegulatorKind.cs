using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Regulator;

/// <summary>Reads three-terminal regulators: <c>U2: L7815 in=A gnd=GND out=B</c>; adjustable ones have <c>adj=</c>.</summary>
internal sealed class RegulatorKind : PartKind
{
    internal override string Name => "regulator";
    internal override IReadOnlyList<string> Words => ["regulator"];
    internal override IReadOnlyList<string> Letters => ["REG", "VREG"];
    internal override IReadOnlyList<DeviceKind> Devices => [DeviceKind.Regulator];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("regulator");
        if (DeviceFinder.Find(facts, context, [.. Devices]) is not var (device, type))
        {
            return null;
        }

        var pins = InOrder(device);
        Pins.Tie(pins, facts, context);
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new RegulatorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                RatedVolts = device.Limits.GetValueOrDefault("inputVolts", double.NaN),
                RatedWatts = device.Limits.GetValueOrDefault("watts", double.NaN),
                Description = type,
            }
        );
    }

    private static List<PinPlan> InOrder(Device device)
    {
        var middle = device.Pinout.Any(p => p.Electrode == "adj") ? "adj" : "gnd";
        string[] order = ["in", middle, "out"];
        return
        [
            .. order.Select((e, i) => new PinPlan(device.Pinout.FirstOrDefault(p => p.Electrode == e)?.Number ?? $"{i + 1}", e)),
        ];
    }
}
