using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>What to measure next, why, and what each outcome would mean.</summary>
internal static class NextReadings
{
    /// <summary>More would not be read.</summary>
    private const int Shown = 3;

    public static void Write(IAnsiConsole console, Sheet sheet, IReadOnlyList<NextReading> next)
    {
        console.Heading("Next reading");
        if (next.Count == 0)
        {
            console.Say("Another reading is not worth its minutes.");
            return;
        }

        foreach (var (reading, number) in next.Take(Shown).Select((n, i) => (n, i + 1)))
        {
            var minutes = Figures.Say(reading.Minutes, "min", 2);
            console.Say($"{number}. {reading.Probe.Where} {reading.Probe.KindText}, {SetupLine.Say(reading.Setup, sheet)}");
            console.Say($"   {reading.Why} ({Figures.Say(reading.Bits, "bit", 2)}, {minutes}, risk: {reading.Risk})");
            foreach (var outcome in reading.Outcomes)
            {
                console.Say($"   - {outcome.Range} ({Figures.Percent(outcome.Probability)}): {outcome.Means}");
            }
        }

        if (next.Take(Shown).Any(n => n.Risk.Contains("live", StringComparison.OrdinalIgnoreCase)))
        {
            console.Say("Live readings: insulated probe, one hand, never alone. Rails hold their charge after switch-off.");
        }
    }
}
