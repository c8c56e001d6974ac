using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Loudspeaker;

/// <summary>Reads loudspeakers and dummy loads: <c>LS1: speaker 8 ohm A -> B</c>.</summary>
internal sealed class LoudspeakerKind : PartKind
{
    internal override string Name => "loudspeaker";
    internal override IReadOnlyList<string> Words => ["speaker", "loudspeaker", "load"];
    internal override IReadOnlyList<string> Letters => ["LS", "SPK", "SP"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        var load = facts.TakeWord("load", "dummy") is not null;
        facts.TakeWord("speaker", "loudspeaker");
        facts.TakeWord("load", "resistor");
        var watts = facts.Take(Unit.Watt, "watts");
        var dc = facts.TakeKeyed(Unit.Ohm, "dc");
        var nominal = facts.TakeValue(Unit.Ohm, "ohms", "impedance", "value");
        if (!facts.Require(nominal, "impedance in ohms", "8 ohm"))
        {
            return null;
        }

        var ohms =
            dc.Value > 0 ? dc.Value
            : load ? nominal.Value
            : Estimated(nominal.Value, facts, context);
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new LoudspeakerPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                NominalOhms = nominal.Value,
                DcOhms = ohms,
                RatedWatts = watts.Value,
                Description = Description.Of(
                    load ? "load" : "speaker",
                    Engineering.Format(nominal.Value, "ohm"),
                    Description.Rating(watts.Value, "W")
                ),
            }
        );
    }

    private static double Estimated(double nominal, PartFacts facts, SheetContext context)
    {
        context.Assume(
            facts.Designator,
            "dc resistance",
            Engineering.Format(0.8 * nominal, "ohm"),
            "0.8 of nominal, common practice, no source"
        );
        return 0.8 * nominal;
    }
}
