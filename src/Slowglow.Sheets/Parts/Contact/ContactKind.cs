using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Contact;

/// <summary>Reads switch and jack contacts: <c>S1a: contact VOICE=bright A -> B</c>.</summary>
internal sealed class ContactKind : PartKind
{
    internal override string Name => "contact";
    internal override IReadOnlyList<string> Words => ["contact", "switch"];
    internal override IReadOnlyList<string> Letters => ["S", "SW"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        facts.TakeWord("contact", "switch");
        var setting = Setting(facts, context);
        if (setting is null)
        {
            return null;
        }

        var pins = Pins.Two(facts, context);
        facts.ReportRest();
        var (name, position) = setting.Value;
        context.Afterwards(() => ContactCheck.Run(entry.Designator, name, position, context));
        return new PartPlan(
            entry,
            pins,
            ends => new ContactPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                SwitchName = name.Text,
                Position = position.Text,
                Description = $"contact {name.Text}={position.Text}",
            }
        );
    }

    private static (Word Name, Word Position)? Setting(PartFacts facts, SheetContext context)
    {
        var entry = facts.Entry;
        if (facts.TakeText("switch") is { } name && facts.TakeText("position") is { } position)
        {
            return (name, position);
        }

        var at = entry.Pairs.FindIndex(p => p.Name.Text is not ("1" or "2"));
        if (at < 0)
        {
            context.Findings.Error(
                entry.Place,
                $"{entry.Designator} does not say when it is closed",
                "write contact NAME=position A -> B",
                entry.Designator
            );
            return null;
        }

        var pair = entry.Pairs[at];
        entry.Pairs.RemoveAt(at);
        return pair;
    }
}
