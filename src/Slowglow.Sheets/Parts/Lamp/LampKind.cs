using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Lamp;

/// <summary>Reads filament lamps: <c>LP1: lamp 6.3V 150mA A -> B</c>.</summary>
internal sealed class LampKind : PartKind
{
    internal override string Name => "lamp";
    internal override IReadOnlyList<string> Words => ["lamp", "bulb"];
    internal override IReadOnlyList<string> Letters => ["LP", "PL", "LA"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        facts.TakeWord("lamp", "bulb");
        var watts = facts.Take(Unit.Watt, "watts");
        var amps = facts.Take(Unit.Ampere, "amps");
        var volts = facts.TakeValue(Unit.Volt, "volts", "value");
        var figure = watts.IsGiven ? watts : amps;
        if (!facts.Require(figure, "rating in watts or amperes", "lamp 6.3V 150mA"))
        {
            return null;
        }

        var rated = volts.Value > 0 ? volts.Value : OnMains(facts, context);
        var power = watts.IsGiven ? watts.Value : amps.Value * rated;
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new LampPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                RatedVolts = rated,
                RatedWatts = power,
                Description = Description.Of("lamp", Engineering.Format(rated, "V"), Engineering.Format(power, "W")),
            }
        );
    }

    private static double OnMains(PartFacts facts, SheetContext context)
    {
        context.Assume(
            facts.Designator,
            "rated volts",
            Engineering.Format(context.Mains.Volts, "V"),
            "none given: taken as a lamp for the mains"
        );
        return context.Mains.Volts;
    }
}
