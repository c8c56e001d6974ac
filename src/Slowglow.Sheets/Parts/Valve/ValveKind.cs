using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Valve;

/// <summary>Reads valves: <c>V1: 12AX7</c>, with pins mentioned elsewhere or named (<c>a=HT g=IN</c>).</summary>
internal sealed class ValveKind : PartKind
{
    internal override string Name => "valve";
    internal override IReadOnlyList<string> Words => ["valve", "tube"];
    internal override IReadOnlyList<string> Letters => ["V"];
    internal override IReadOnlyList<DeviceKind> Devices =>
        [DeviceKind.Triode, DeviceKind.Pentode, DeviceKind.RectifierValve, DeviceKind.GasRegulator];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("valve", "tube");
        if (DeviceFinder.Find(facts, context, [.. Devices]) is not var (device, type))
        {
            return null;
        }

        var pins = Pins.OfDevice(device);
        Pins.Tie(pins, facts, context);
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new ValvePart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                RatedWatts = device.Limits.GetValueOrDefault("anodeWatts", double.NaN),
                RatedVolts = device.Limits.GetValueOrDefault("anodeVolts", double.NaN),
                Description = type,
            }
        );
    }
}
