using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Transistor;

/// <summary>Reads transistors: <c>Q1: 2N3904 c=A b=B e=C</c>.</summary>
internal sealed class TransistorKind : PartKind
{
    internal override string Name => "transistor";
    internal override IReadOnlyList<string> Words => ["transistor", "bjt", "jfet", "mosfet", "fet", "darlington"];
    internal override IReadOnlyList<string> Letters => ["Q", "VT"];
    internal override IReadOnlyList<DeviceKind> Devices =>
        [DeviceKind.Bjt, DeviceKind.Jfet, DeviceKind.Mosfet, DeviceKind.Darlington];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("transistor", "bjt", "jfet", "mosfet", "fet", "darlington");
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
            ends => new TransistorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                RatedWatts = device.Limits.GetValueOrDefault("watts", double.NaN),
                RatedVolts = device.Limits.GetValueOrDefault("volts", double.NaN),
                Description = type,
            }
        );
    }

    private static List<PinPlan> InOrder(Device device)
    {
        string[] order = device.Kind is DeviceKind.Bjt or DeviceKind.Darlington ? ["c", "b", "e"] : ["d", "g", "s"];
        return
        [
            .. order.Select((e, i) => new PinPlan(device.Pinout.FirstOrDefault(p => p.Electrode == e)?.Number ?? $"{i + 1}", e)),
        ];
    }
}
