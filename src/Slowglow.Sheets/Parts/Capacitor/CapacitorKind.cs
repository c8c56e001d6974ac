using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Capacitor;

/// <summary>Reads capacitors: <c>C1: 22u 400V A -> B</c>; the arrow runs from plus to minus.</summary>
internal sealed class CapacitorKind : PartKind
{
    internal override string Name => "capacitor";
    internal override IReadOnlyList<string> Words => ["capacitor", "cap"];
    internal override IReadOnlyList<string> Letters => ["C", "VC"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        var volts = facts.Take(Unit.Volt, "volts");
        var value = facts.TakeValue(Unit.Farad, "farads", "value");
        var said = Style(facts);
        if (!Plausible(value, facts, context) || !facts.Require(value, "value in farads", "22u, 2n2 or 100p"))
        {
            return null;
        }

        Preferred.Check(value, facts.Designator, "F", context.Findings);
        var style = said == CapacitorStyle.Unsaid ? Assumed(value.Value, facts, context) : said;
        var tolerance = facts.Tolerance(Usual(style), $"{Word(style)}, common practice, no source");
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new CapacitorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Farads = value.Value,
                Tolerance = tolerance,
                Style = style,
                RatedVolts = volts.Value,
                Description = Description.Of(
                    Engineering.Drawing(value.Value, "F"),
                    Description.Rating(volts.Value, "V"),
                    said == CapacitorStyle.Unsaid ? null : Word(said)
                ),
            }
        );
    }

    private static bool Plausible(Figure value, PartFacts facts, SheetContext context)
    {
        if (!(value.Value >= 1))
        {
            return true;
        }

        context.Findings.Error(
            value.Word.Place,
            $"{facts.Designator}: '{value.Word.Text}' would be {Engineering.Format(value.Value, "F")}",
            $"write {value.Word.Text}p or {value.Word.Text}u, whichever the drawing means",
            facts.Designator
        );
        return false;
    }

    private static CapacitorStyle Style(PartFacts facts)
    {
        var word = facts.TakeWord(
            "electrolytic",
            "elec",
            "bipolar",
            "np",
            "tantalum",
            "film",
            "polyester",
            "polypropylene",
            "mylar",
            "foil",
            "paper",
            "oil",
            "ceramic",
            "disc",
            "mica"
        );
        facts.TakeWord("film", "capacitor");
        return word switch
        {
            "electrolytic" or "elec" => CapacitorStyle.Electrolytic,
            "bipolar" or "np" => CapacitorStyle.Bipolar,
            "tantalum" => CapacitorStyle.Tantalum,
            "film" or "polyester" or "polypropylene" or "mylar" or "foil" => CapacitorStyle.Film,
            "paper" or "oil" => CapacitorStyle.Paper,
            "ceramic" or "disc" => CapacitorStyle.Ceramic,
            "mica" => CapacitorStyle.Mica,
            _ => CapacitorStyle.Unsaid,
        };
    }

    private static CapacitorStyle Assumed(double farads, PartFacts facts, SheetContext context)
    {
        var style =
            farads >= 0.99e-6 ? CapacitorStyle.Electrolytic
            : farads >= 0.99e-9 ? CapacitorStyle.Film
            : CapacitorStyle.Ceramic;
        context.Assume(facts.Designator, "kind of capacitor", Word(style), "from its value, common practice, no source");
        return style;
    }

    private static double Usual(CapacitorStyle style) =>
        style switch
        {
            CapacitorStyle.Film => 0.10,
            CapacitorStyle.Mica => 0.05,
            _ => 0.20,
        };

    private static string Word(CapacitorStyle style) => style.ToString().ToLowerInvariant();
}
