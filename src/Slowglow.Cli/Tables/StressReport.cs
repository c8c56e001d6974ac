using Slowglow.Bench.Questions;
using Slowglow.Power.Stress;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>stress</c> for people.</summary>
internal static class StressReport
{
    private const int MostUnrated = 25;

    public static void Write(IAnsiConsole console, Sheet sheet, UnitStress stress)
    {
        var rows = stress.Rows;
        console.Say($"{sheet.Unit}: what its parts stand at the worst of {string.Join("; ", stress.Situations)}.");
        foreach (var name in stress.Unsettled)
        {
            console.Say($"Nothing is known of \"{name}\": the circuit does not settle there, or passes nothing clean.");
        }

        var over = rows.Count(r => r.IsOver);
        console.Say(over == 0 ? "No part is over its rating." : $"{over} over the rating.");
        Table(console, "With a rating", rows.Where(r => !double.IsNaN(r.Ratio)));
        var unrated = rows.Where(r => double.IsNaN(r.Ratio)).ToArray();
        Table(console, "Without a rating on the drawing: what to fit", unrated.Take(MostUnrated));
        if (unrated.Length > MostUnrated)
        {
            console.Say($"and {unrated.Length - MostUnrated} more; --json has all.");
        }

        CautionLines.Write(console);
    }

    public static void Table(IAnsiConsole console, string heading, IEnumerable<StressRow> rows)
    {
        console.Heading(heading);
        var table = Layout.Table("Part", "Is", "What", ">Stands", ">Rated", ">Of it", ">Fit", "When");
        foreach (var r in rows)
        {
            table.Row(
                r.Part,
                r.Description,
                r.What,
                Figures.Say(r.Value, r.Unit),
                Figures.Say(r.Rated, r.Unit),
                double.IsNaN(r.Ratio) ? "" : Figures.Percent(r.Ratio),
                Figures.Say(r.Needed, r.Unit),
                r.Situation
            );
        }

        console.Write(table);
    }
}
