using Slowglow.Power.Overload;
using Slowglow.Sheets.Parts;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>overload</c> for people.</summary>
internal static class OverloadReport
{
    private const int Most = 25;

    public static void Write(IAnsiConsole console, Part dead, OverloadAnswer answer)
    {
        var causes = answer.Causes;
        var part = dead.Designator;
        if (causes.Count == 0)
        {
            console.Say($"No single fault of another part overloads {part} by what the sheet says of it.");
        }
        else
        {
            console.Say(
                $"Before a new {part} goes in, check {string.Join(", ", causes.Take(Most).Select(c => c.Part).Distinct().Take(8))}: each of these faults overloads it."
            );
            var table = Layout.Table("Fault", "What", ">Then", ">Healthy", ">Times", ">Stands it for", "Fuse that goes first");
            foreach (var c in causes.Take(Most))
            {
                table.Row(
                    c.Fault,
                    c.What,
                    Figures.Say(c.Value, c.Unit),
                    Figures.Say(c.Healthy, c.Unit),
                    Figures.Say(c.Ratio, "", 2),
                    double.IsNaN(c.Seconds) ? ""
                        : double.IsFinite(c.Seconds) ? Figures.Say(c.Seconds, "s", 2)
                        : "for good",
                    c.ClearedBy ?? ""
                );
            }

            console.Write(table);
            if (OverloadCause.Protection(dead, causes) is { Length: > 0 } protection)
            {
                console.Say(protection);
            }

            console.Say(
                "Times are over the rating, or over what is healthy where there is none. How long it lasts is an estimate from a transformer of the same duty, or of a fuse of its type at its slowest (time-lag where the drawing says none)."
            );
        }

        if (answer.SwitchOn is { } inrush)
        {
            console.Say(inrush.Words);
        }

        CautionLines.Write(console);
    }
}
