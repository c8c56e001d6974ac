using Slowglow.Bench.Questions;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>What the whole unit stands, for people.</summary>
internal static class ConcernReport
{
    private const int MostRipple = 4;

    public static void Write(IAnsiConsole console, UnitConcerns concerns)
    {
        console.Heading("The unit at rest");
        foreach (var sentence in ConcernWords.Say(concerns))
        {
            console.Say(sentence);
        }

        if (concerns.Windings.Count > 0)
        {
            var table = Layout.Table("Winding", ">Rms", ">DC", ">Rated");
            foreach (var w in concerns.Windings)
            {
                table.Row(
                    $"{w.Part} {w.Winding}, {w.FromPin} to {w.ToPin}",
                    Figures.Say(w.AmpsRms, "A"),
                    Figures.Shown(w.AmpsDc, "A"),
                    Figures.Say(w.RatedAmps, "A")
                );
            }

            console.Write(table);
        }

        if (concerns.Ripple.Count > 0)
        {
            var table = Layout.Table("Ripple current", ">Rms");
            foreach (var c in concerns.Ripple.Take(MostRipple))
            {
                table.Row(c.Part, Figures.Say(c.AmpsRms, "A", 2));
            }

            console.Write(table);
        }
    }
}
