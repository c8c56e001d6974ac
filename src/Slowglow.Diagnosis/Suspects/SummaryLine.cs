using System.Globalization;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>The answer in one sentence.</summary>
internal static class SummaryLine
{
    private const double Certain = 0.9;
    private const double Leading = 0.5;

    public static string Say(
        IReadOnlyList<Suspect> suspects,
        double healthy,
        double none,
        IReadOnlyList<NextReading> next,
        int readings,
        IReadOnlyList<string> doubts,
        string stop
    ) =>
        doubts.Count == 0
            ? Say(suspects, healthy, none, next, readings, stop)
            : $"{string.Join(" ", doubts)} Until that is settled: {Say(suspects, healthy, none, next, readings, stop)}";

    private static string Say(
        IReadOnlyList<Suspect> suspects,
        double healthy,
        double none,
        IReadOnlyList<NextReading> next,
        int readings,
        string stop
    )
    {
        var best = suspects.Count > 0 ? suspects[0].Probability : 0;
        var then = stop.Length > 0 ? " Replace it rather than measure on." : Then(next);
        if (none > best && none > healthy)
        {
            return $"Neither one fault nor two explain this well ({Percent(none)} for none of these): check the readings, the drawing, and whether several things are wrong.{then}";
        }
        if (healthy > best)
        {
            return $"As far as the evidence goes nothing is wrong ({Percent(healthy)}).{then}";
        }
        var first = suspects[0];
        var who =
            first.Group.Count == 1 || first.Second is not null
                ? first.Words
                : $"one of {string.Join(", ", first.Group)} ({first.Fault})";
        if (best > Certain)
        {
            return $"{who}, {Percent(best)}.{then}";
        }
        var second = suspects.Count > 1 ? $", then {Name(suspects[1])} ({Percent(suspects[1].Probability)})" : "";
        return best > Leading
            ? $"Most likely {who}, {Percent(best)}{second}.{then}"
            : $"Open after {Count(readings)}: {who} leads with {Percent(best)}{second}.{then}";
    }

    private static string Name(Suspect suspect) =>
        suspect.Second is null ? suspect.Part : $"{suspect.Group[0]} and {suspect.Group[^1]} together";

    private static string Then(IReadOnlyList<NextReading> next) =>
        next.Count == 0
            ? ""
            : $" Measure {next[0].Probe.Where} {next[0].Probe.KindText} next, with the unit on \"{next[0].Setup.Name}\".";

    private static string Count(int readings) =>
        readings == 1 ? "1 reading" : $"{readings.ToString(CultureInfo.InvariantCulture)} readings";

    private static string Percent(double share) =>
        (share > 0.995 ? "over 99" : Math.Round(100 * share).ToString(CultureInfo.InvariantCulture)) + " %";
}
