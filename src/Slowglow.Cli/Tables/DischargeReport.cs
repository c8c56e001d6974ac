using Slowglow.Power.Energy;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>discharge</c> for people.</summary>
internal static class DischargeReport
{
    public static void Write(IAnsiConsole console, Sheet sheet, IReadOnlyList<StoredCharge> charges)
    {
        console.Say($"{sheet.Unit}: what is left in its capacitors after switch-off, valves taken as cold.");
        if (charges.Count == 0)
        {
            console.Say("Nothing of 12 V or more is stored, or the circuit does not settle.");
        }

        var table = Layout.Table(
            "Capacitor",
            ">Volts",
            ">Energy",
            ">To 60 V",
            ">To 35 V",
            "Longest without",
            ">Then",
            "Discharge with",
            ">Done in"
        );
        foreach (var c in charges)
        {
            table.Row(
                c.Capacitor,
                Figures.Say(c.Volts, "V"),
                Figures.Say(c.Joules, "J", 2),
                Time(c.SecondsTo60),
                Time(c.SecondsTo35),
                c.Discharger is { } part ? $"{part} open" : "",
                c.Discharger is null ? "" : Time(c.SecondsWithout),
                c.Tool is { } tool
                    ? $"{Figures.Say(tool.Ohms, "ohm")} {Figures.Say(tool.RatedWatts, "W")} ({Figures.Say(tool.CrestWatts, "W", 2)} at first)"
                    : "",
                c.Tool is { } used ? Figures.Say(used.Seconds, "s", 2) : ""
            );
        }

        console.Write(table);
        foreach (var c in charges.Where(c => c.CallsForCaution))
        {
            console.Say(
                $"{c.Capacitor} may hold {Figures.Say(c.Volts, "V")} for {Time(Math.Max(c.SecondsTo60, c.SecondsWithout))} after switch-off: discharge it through the resistor, and measure before touching."
            );
        }

        CautionLines.Write(console);
    }

    /// <summary>"0 s", "85 ms", "42 s", "5.1 min", "3 h", "longer than a month".</summary>
    private static string Time(double seconds) =>
        seconds switch
        {
            double.PositiveInfinity => "longer than a month",
            0 => "at once",
            < 120 => Figures.Say(seconds, "s", 2),
            < 7200 => $"{Figures.Say(seconds / 60, "", 2)} min",
            < 172800 => $"{Figures.Say(seconds / 3600, "", 2)} h",
            _ => $"{Figures.Say(seconds / 86400, "", 2)} days",
        };
}
