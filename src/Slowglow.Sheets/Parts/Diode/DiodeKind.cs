using Slowglow.Quantities;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Diode;

/// <summary>Reads diodes, zeners and LEDs: <c>D1: 1N4007 A -> B</c>, <c>D2: zener 12V A -> B</c>; the arrow runs from anode to cathode.</summary>
internal sealed class DiodeKind : PartKind
{
    internal override string Name => "diode";
    internal override IReadOnlyList<string> Words => ["diode", "zener", "led"];
    internal override IReadOnlyList<string> Letters => ["D", "ZD", "LED", "CR", "Z"];
    internal override IReadOnlyList<DeviceKind> Devices => [DeviceKind.Diode, DeviceKind.Zener, DeviceKind.Led];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context, "a", "k");
        var watts = facts.Take(Unit.Watt, "watts");
        if (Made(facts, watts, context) is not var (device, type))
        {
            return null;
        }

        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new DiodePart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Device = device,
                RatedWatts = watts.IsGiven ? watts.Value : device.Limits.GetValueOrDefault("watts", double.NaN),
                RatedVolts = device.Limits.GetValueOrDefault("volts", double.NaN),
                Description = type,
            }
        );
    }

    private static (Device Device, string Type)? Made(PartFacts facts, Figure watts, SheetContext context)
    {
        var zener = facts.TakeWord("zener") is not null || facts.Designator.StartsWith("ZD", StringComparison.Ordinal);
        var led = facts.TakeWord("led") is not null || facts.Designator.StartsWith("LED", StringComparison.Ordinal);
        facts.TakeWord("diode");
        var named = facts.Entry.Words.Exists(w => context.Devices.Find(w.Text) is not null);
        if (zener && !named)
        {
            var volts = facts.Take(Unit.Volt, "volts");
            volts = volts.IsGiven || volts.IsBroken ? volts : facts.TakeValue(Unit.Volt);
            if (volts.IsGiven || volts.IsBroken || facts.Entry.Words.Count == 0)
            {
                return Zener(facts, volts, watts, context);
            }
        }

        if (led && !named)
        {
            return Led(facts, context);
        }

        return DeviceFinder.Find(facts, context, DeviceKind.Diode, DeviceKind.Zener, DeviceKind.Led);
    }

    private static (Device Device, string Type)? Zener(PartFacts facts, Figure volts, Figure watts, SheetContext context)
    {
        if (!facts.Require(volts, "zener voltage", "zener 12V", 1000))
        {
            return null;
        }

        var power = watts.IsGiven ? watts.Value : 0.5;
        if (!watts.IsGiven)
        {
            context.Assume(facts.Designator, "rating", Engineering.Format(power, "W"), "none given, common practice, no source");
        }

        var tolerance = facts.Tolerance(0.05, "zener diodes, common practice, no source");
        var device = MadeUpDiode.Zener(volts.Value, power, tolerance);
        return (device, Description.Of("zener", Engineering.Format(volts.Value, "V"), Description.Rating(watts.Value, "W")));
    }

    private static (Device Device, string Type) Led(PartFacts facts, SheetContext context)
    {
        var colour =
            facts.TakeWord("red", "amber", "yellow", "orange", "green", "blue", "white") ?? facts.TakeText("colour")?.Text;
        if (colour is null)
        {
            context.Assume(facts.Designator, "colour", "red", "none given");
        }

        var device = MadeUpDiode.Led(colour ?? "red");
        DeviceSpread.List(facts.Designator, device, context);
        return (device, Description.Of("LED", colour));
    }
}
