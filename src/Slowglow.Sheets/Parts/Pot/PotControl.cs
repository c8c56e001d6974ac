using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Pot;

/// <summary>Ties a pot to its entry under controls.</summary>
internal static class PotControl
{
    private const double Middle = 0.5;

    internal static (string? Name, double Rotation) Of(PartFacts facts, bool trimmer, SheetContext context)
    {
        var said = facts.TakeText("control") ?? facts.TakeName();
        var name = said?.Text ?? (context.Controls.Exists(c => c.Name == facts.Designator) ? facts.Designator : null);
        if (name is null)
        {
            Assume(facts.Designator, trimmer, context);
            return (null, Middle);
        }

        context.ControlsUsed.Add(name);
        var control = context.Controls.Find(c => c.Name == name);
        if (control is not null)
        {
            return (name, control.Rotation);
        }

        var near = NearestWords.Suggestion(name, context.Controls.Select(c => c.Name));
        var place = said?.Place ?? facts.Entry.Place;
        context.Findings.Warning(
            place,
            $"{facts.Designator}: '{name}' is not under controls; 50 % is assumed",
            near.Length > 0 ? near : $"add under controls: {name}: 50 %",
            facts.Designator
        );
        context.Controls.Add(new Control(name, Middle, place));
        Assume(name, trimmer, context);
        return (name, Middle);
    }

    private static void Assume(string subject, bool trimmer, SheetContext context) =>
        context.Assume(
            subject,
            "rotation",
            Engineering.Format(Middle * 100, "%"),
            trimmer ? "set on a bench, not known" : "no entry under controls"
        );
}
