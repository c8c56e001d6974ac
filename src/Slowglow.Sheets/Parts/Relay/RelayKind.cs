using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Relay;

/// <summary>Reads relays: <c>K1: relay 12V 400ohm A -> B</c>; its contacts are <c>K1a: contact K1=on C -> D</c>.</summary>
internal sealed class RelayKind : PartKind
{
    /// <summary>Watts of a coil that the drawing says nothing of.</summary>
    private const double UsualWatts = 0.4;

    internal override string Name => "relay";
    internal override IReadOnlyList<string> Words => ["relay"];
    internal override IReadOnlyList<string> Letters => ["K", "RL", "RLA", "RY"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("relay");
        var pins = Pins.Two(facts, context);
        var coil = facts.Take(Unit.Ohm, "ohms", "coil");
        var volts = facts.TakeValue(Unit.Volt, "volts", "value");
        if (!facts.Require(volts, "coil voltage", "relay 12V 400ohm", 1000))
        {
            return null;
        }

        var ohms = coil.Value > 0 ? coil.Value : Estimated(volts.Value, facts, context);
        context.Assume(
            entry.Designator,
            "pull-in and release",
            "75 % and 10 % of the coil volts",
            "common practice, no source; a setup may say how it stands"
        );
        facts.ReportRest();
        context.Switches.Add(new Switch(entry.Designator, ["off", "on"], entry.Place));
        return new PartPlan(
            entry,
            pins,
            ends => new RelayPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                RatedVolts = volts.Value,
                Ohms = ohms,
                Description = Description.Of(
                    "relay",
                    Engineering.Format(volts.Value, "V"),
                    Description.Rating(coil.Value, "ohm")
                ),
            }
        );
    }

    private static double Estimated(double volts, PartFacts facts, SheetContext context)
    {
        var ohms = volts * volts / UsualWatts;
        context.Assume(
            facts.Designator,
            "coil resistance",
            Engineering.Format(ohms, "ohm"),
            "a coil of 0.4 W, common practice, no source"
        );
        return ohms;
    }
}
