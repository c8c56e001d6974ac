using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Contact;

/// <summary>A contact's switch must exist and have that position.</summary>
internal static class ContactCheck
{
    internal static void Run(string designator, Word name, Word position, SheetContext context)
    {
        var found = context.Switches.Find(s => s.Name == name.Text);
        if (found is null)
        {
            var near = NearestWords.Suggestion(name.Text, context.Switches.Select(s => s.Name));
            context.Findings.Error(
                name.Place,
                $"{designator}: there is no switch '{name.Text}' under switches",
                near.Length > 0 ? near : $"add under switches: {name.Text}: [other, {position.Text}]",
                designator
            );
        }
        else if (!found.Positions.Contains(position.Text))
        {
            context.Findings.Error(
                position.Place,
                $"{designator}: {name.Text} has no position '{position.Text}'",
                "its positions: " + string.Join(", ", found.Positions),
                designator
            );
        }
    }
}
