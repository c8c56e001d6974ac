using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Unknown;

/// <summary>Reads stand-ins: <c>X1: {is: unknown, between: [A, B], ohms: 47k}</c>.</summary>
internal sealed class UnknownKind : PartKind
{
    internal override string Name => "unknown";
    internal override IReadOnlyList<string> Words => ["unknown"];
    internal override IReadOnlyList<string> Letters => ["X"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        facts.TakeWord("unknown");
        var ohms = facts.TakeValue(Unit.Ohm, "ohms", "value");
        if (!facts.Require(ohms, "value in ohms", "{is: unknown, between: [A, B], ohms: 47k}"))
        {
            return null;
        }

        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new UnknownPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Ohms = ohms.Value,
                Description = Description.Of("unknown", Engineering.Format(ohms.Value, "ohm")),
            }
        );
    }
}
