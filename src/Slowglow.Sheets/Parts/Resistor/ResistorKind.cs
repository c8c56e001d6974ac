using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Resistor;

/// <summary>Reads resistors: <c>R1: 100k 1W 5% A -> B</c>.</summary>
internal sealed class ResistorKind : PartKind
{
    internal override string Name => "resistor";
    internal override IReadOnlyList<string> Words => ["resistor"];
    internal override IReadOnlyList<string> Letters => ["R"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        var watts = facts.Take(Unit.Watt, "watts");
        var volts = facts.Take(Unit.Volt, "volts");
        var value = facts.TakeValue(Unit.Ohm, "ohms", "value");
        var style = Style(facts);
        if (!facts.Require(value, "value in ohms", "4k7, 470 or 1M", 1e10))
        {
            return null;
        }

        Preferred.Check(value, facts.Designator, "R", context.Findings);
        var tolerance =
            style == ResistorStyle.Carbon
                ? facts.Tolerance(0.10, "carbon composition, common practice, no source")
                : facts.Tolerance(0.05, "film or wirewound, common practice, no source");
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new ResistorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Ohms = value.Value,
                Tolerance = tolerance,
                Style = style,
                RatedWatts = watts.Value,
                RatedVolts = volts.Value,
                Description = Description.Of(Engineering.Drawing(value.Value), Description.Rating(watts.Value, "W")),
            }
        );
    }

    private static ResistorStyle Style(PartFacts facts)
    {
        var word = facts.TakeWord("film", "metal", "oxide", "carbon", "composition", "comp", "wirewound", "ww", "cement");
        while (
            facts.TakeWord(
                "film",
                "oxide",
                "composition",
                "comp",
                "resistor",
                "flameproof",
                "fusible",
                "metal-film",
                "carbon-film"
            )
                is { } more
        )
        {
            word =
                word == "carbon" && more is "film"
                    ? "film"
                    : word ?? (more.EndsWith("film", StringComparison.Ordinal) ? "film" : null);
        }

        return word switch
        {
            "film" or "metal" or "oxide" => ResistorStyle.Film,
            "carbon" or "composition" or "comp" => ResistorStyle.Carbon,
            "wirewound" or "ww" or "cement" => ResistorStyle.Wirewound,
            _ => ResistorStyle.Unsaid,
        };
    }
}
