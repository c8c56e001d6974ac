using System.Globalization;
using System.Text;

namespace Slowglow.Trials;

/// <summary>Writes docs/trials.md.</summary>
internal static class Report
{
    public static string Write(IReadOnlyList<(string Unit, IReadOnlyList<TrialResult> Results)> all, int mostReadings, int seed)
    {
        var text = new StringBuilder();
        text.AppendLine("# Trials: hidden faults");
        text.AppendLine();
        text.AppendLine(
            CultureInfo.InvariantCulture,
            $"""
            Made by `dotnet run -c Release --project benchmarks/Slowglow.Trials` (seed {seed}); do not edit by hand.

            For each demo sheet, single faults are hidden one at a time in a unit whose parts lie at random within their tolerances (first order
            in the spread that the solver gives). Parts are drawn evenly, then a fault of the part; severities of soft faults lie off the
            program's own grid by up to a third either way. Only faults that make a complaint are hidden: 6 dB of level, 8 % and thrice the
            healthy distortion, 12 dB of hum, 0.5 V of DC at the output, or a blown fuse (a fault that drives a fuse past twice its rating is
            hidden together with the blown fuse, and the cause is the true part). The program is given the complaint, then up to {mostReadings}
            readings, each the one it asked for, taken with the loading, error and digits of a handheld meter. A rank counts the suspects as
            the program shows them: a group that no reading on offer can tell apart is one suspect; "alone" says how often the first suspect
            is a single part.
            """
        );
        text.AppendLine();
        AddSummary(text, all);
        foreach (var (unit, results) in all)
        {
            AddUnit(text, unit, results);
        }
        return text.ToString();
    }

    private static void AddSummary(StringBuilder text, IReadOnlyList<(string Unit, IReadOnlyList<TrialResult> Results)> all)
    {
        text.AppendLine(
            "| unit | faults | true part first | in first three | alone when first | readings, mean | minutes, mean | slowest update, median |"
        );
        text.AppendLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var (unit, r) in all)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"| {unit} | {r.Count} | {Share(r, x => x.Rank == 1)} | {Share(r, x => x.Rank <= 3)} | {Share([.. r.Where(x => x.Rank == 1)], x => x.FirstGroup == 1)} | {r.Average(x => x.Readings):F1} | {r.Average(x => x.Minutes):F0} | {r.Select(x => x.WorstUpdateMilliseconds).Order().ElementAt(r.Count / 2):F0} ms |"
            );
        }
        text.AppendLine();
    }

    private static void AddUnit(StringBuilder text, string unit, IReadOnlyList<TrialResult> results)
    {
        text.AppendLine(CultureInfo.InvariantCulture, $"## {unit}");
        text.AppendLine();
        text.AppendLine("| hidden | complaint | rank | first suspect | its probability | none of these | readings |");
        text.AppendLine("| --- | --- | --- | --- | --- | --- | --- |");
        foreach (var r in results)
        {
            var rank = r.Rank == int.MaxValue ? "not listed" : r.Rank.ToString(CultureInfo.InvariantCulture);
            var group = r.FirstGroup > 1 ? $" (of {r.FirstGroup})" : "";
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"| {string.Join(" + ", r.Hidden)} | {r.Complaint} | {rank} | {r.First}{group} | {r.FirstProbability:P0} | {r.None:P0} | {r.Readings} |"
            );
        }
        text.AppendLine();
    }

    private static string Share(IReadOnlyList<TrialResult> results, Func<TrialResult, bool> counts) =>
        results.Count == 0 ? "-" : $"{100.0 * results.Count(counts) / results.Count:F0} %";
}
