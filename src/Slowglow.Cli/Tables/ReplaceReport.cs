using Slowglow.Bench.Questions;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>replace</c> for people.</summary>
internal static class ReplaceReport
{
    private const int MostPoints = 20;

    public static void Write(IAnsiConsole console, Replacement r)
    {
        console.Say($"{r.Part}: {r.Is} in the place of {r.Was}.");
        var outside = r.Moved.Count(m => !m.InBand);
        console.Say(
            outside == 0
                ? $"All of {r.Points} points stay within the band of a healthy unit as drawn."
                : $"{outside} of {r.Points} points leave the band of a healthy unit as drawn."
        );
        foreach (var words in r.Levels)
        {
            console.Say(words);
        }

        if (r.Moved.Count > 0)
        {
            var table = Layout.Table("Moves", "", ">Was", ">Is", ">Band as drawn", "");
            foreach (var m in r.Moved.Take(MostPoints))
            {
                var unit = m.Before.Unit;
                table.Row(
                    m.Before.Probe.Where,
                    m.Before.Probe.KindText,
                    Figures.Nominal(m.Before),
                    Figures.Shown(m.Now, unit),
                    Figures.Band(m.Before.Low, m.Before.High, unit),
                    m.InBand ? "within" : "OUTSIDE"
                );
            }

            console.Write(table);
        }

        if (r.Own.Count > 0)
        {
            StressReport.Table(console, "What the new part stands", r.Own);
        }

        var fresh = r.Over.Where(o => !r.OverBefore.Contains($"{o.Part} {o.What}")).ToArray();
        console.Say(fresh.Length == 0 ? "No further part comes over its rating." : "Over the rating now:");
        foreach (var o in fresh)
        {
            console.Say(
                $"{o.Part}: {o.What} {Figures.Say(o.Value, o.Unit)}, {Figures.Percent(o.Ratio)} of its rating ({o.Situation})"
            );
        }

        CautionLines.Write(console);
    }
}
