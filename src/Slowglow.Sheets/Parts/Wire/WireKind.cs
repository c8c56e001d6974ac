using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Wire;

/// <summary>Reads wires and links: <c>W1: wire A -> B</c>.</summary>
internal sealed class WireKind : PartKind
{
    internal override string Name => "wire";
    internal override IReadOnlyList<string> Words => ["wire", "link", "jumper", "strap"];
    internal override IReadOnlyList<string> Letters => ["W", "LK", "JP"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        var word = facts.TakeWord("wire", "link", "jumper", "strap") ?? "wire";
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new WirePart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Description = word,
            }
        );
    }
}
