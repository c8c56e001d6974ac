using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Optocoupler;

/// <summary>Reads optocouplers with a light-dependent resistor: <c>OC1: VTL5C3 a=A k=B ra=C rb=D</c>.</summary>
internal sealed class OptocouplerKind : PartKind
{
    internal override string Name => "optocoupler";
    internal override IReadOnlyList<string> Words => ["optocoupler", "opto", "photocell"];
    internal override IReadOnlyList<string> Letters => ["OC", "OK", "PC"];
    internal override IReadOnlyList<DeviceKind> Devices => [DeviceKind.Optocoupler];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("optocoupler", "opto", "photocell");
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
            ends => new OptocouplerPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                Description = type,
            }
        );
    }
}
