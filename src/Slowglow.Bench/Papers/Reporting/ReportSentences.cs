using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>The sentences that a report begins with.</summary>
internal static class ReportSentences
{
    private const int LongestNote = 1500;

    /// <summary>The fault, what the part is, and what was seen; what the note says where no suspect was settled on.</summary>
    public static string Found(SettledSuspect? settled, JobDealings dealings, Sheet? sheet, IReadOnlyList<Reading> readings)
    {
        var looks = readings
            .Where(r => r.Look is not null && !r.IsMistake)
            .Select(r => $"{r.Probe.Where}: {r.Shown}")
            .Distinct()
            .ToList();
        var seen = looks.Count > 0 ? $"Seen: {string.Join("; ", looks)}." : "";
        if (settled is null)
        {
            return Join(Noted(dealings), seen);
        }

        var both = settled.Suspect.Second is null ? settled.Fault.ToString() : settled.Suspect.Words;
        var part = sheet?.Parts.FirstOrDefault(p => p.Designator == settled.Part);
        return Join($"{both}.", part is null ? "" : $"{settled.Part} is {part.Description}.", seen);
    }

    /// <summary>What the fault does to the circuit, what of the complaint it explains, and what it does to each channel; empty without a suspect.</summary>
    public static string Why(SettledSuspect? settled, LevelComparison? levels)
    {
        if (settled is null)
        {
            return "";
        }

        // What was read stands in the table. Of the rest, the first sentence says what the fault does, the others answer the customer's words.
        var explains = settled.Suspect.Explains.Where((s, i) => i == 0 || s.Contains("your \"", StringComparison.Ordinal));
        var heard = levels is null
            ? []
            : levels.Channels.Where(c => c.Sentences is not [var only] || !IsAsItShouldBe(c, only)).SelectMany(c => c.Sentences);
        return Join([.. explains.Concat(heard).Distinct()]);
    }

    /// <summary>What was fitted and what the hours say.</summary>
    public static string Done(JobDealings dealings)
    {
        var fitted = dealings
            .Fitted.GroupBy(f => f.Part)
            .Select(g => g.Sum(f => f.Quantity) is > 1 and var pieces ? $"{pieces} x {g.Key}" : g.Key)
            .ToList();
        var work = dealings
            .Hours.Select(h => h.What.Trim().TrimEnd('.'))
            .Where(w => w.Length > 0)
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(Sentence);
        return Join([fitted.Count > 0 ? $"Replaced: {string.Join("; ", fitted)}." : "", .. work]);
    }

    private static string Noted(JobDealings dealings)
    {
        var note =
            dealings
                .Counting.OfType<NoteWritten>()
                .Select(n => n.Text.Trim())
                .LastOrDefault(t => t.StartsWith("found", StringComparison.OrdinalIgnoreCase))
            ?? "";
        var what = note.Length > 5 ? note[5..].TrimStart(' ', ':') : "";
        return what.Length == 0 ? "" : Sentence(what.Length > LongestNote ? what[..LongestNote] : what.TrimEnd('.'));
    }

    private static bool IsAsItShouldBe(ComparedChannel channel, string sentence) =>
        LevelWords.Compare(channel.Healthy, channel.Healthy).Contains(sentence)
        || sentence.Contains("is as it should be", StringComparison.Ordinal);

    private static string Sentence(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}.";

    private static string Join(params IReadOnlyList<string> sentences) => string.Join(' ', sentences.Where(s => s.Length > 0));
}
