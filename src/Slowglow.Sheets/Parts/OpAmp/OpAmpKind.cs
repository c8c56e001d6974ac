using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.OpAmp;

/// <summary>Reads op-amps: <c>U1: TL072</c>, pins mentioned elsewhere by number.</summary>
internal sealed class OpAmpKind : PartKind
{
    internal override string Name => "op-amp";
    internal override IReadOnlyList<string> Words => ["op-amp", "opamp"];
    internal override IReadOnlyList<string> Letters => ["U", "IC"];
    internal override IReadOnlyList<DeviceKind> Devices => [DeviceKind.OpAmp];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("op-amp", "opamp");
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
            ends => new OpAmpPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                RatedVolts = device.Limits.GetValueOrDefault("volts", double.NaN),
                Description = type,
            }
        );
    }
}
