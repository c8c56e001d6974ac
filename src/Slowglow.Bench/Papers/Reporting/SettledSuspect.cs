using System.Text.RegularExpressions;
using Slowglow.Bench.Jobs.History;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>The suspect that the job was settled on, and what says so.</summary>
/// <param name="Part">Designator of the part that was found to be bad.</param>
/// <param name="Fault">Its likeliest fault, of the way that the note names where one does.</param>
/// <param name="By">"by the note that says what was found".</param>
internal sealed record SettledSuspect(Suspect Suspect, string Part, Fault Fault, string By)
{
    private const double Likely = 0.5;

    /// <summary>
    /// What a person wrote down goes first: the note that says what was found, then a part fitted, then a part needed. Only without any of them does
    /// the leading suspect stand, and only where it is likelier than not. Null when nothing settles it.
    /// </summary>
    public static SettledSuspect? Of(DiagnosisResult diagnosis, JobDealings dealings, Circuit circuit) =>
        ByNote(diagnosis, dealings, circuit)
        ?? ByParts(diagnosis, dealings.Fitted.Select(f => f.Part), "by the part that was fitted")
        ?? ByParts(diagnosis, dealings.Needed.Select(n => n.Part), "by the part that was needed")
        ?? diagnosis
            .Suspects.Take(1)
            .Where(s => s.Probability >= Likely)
            .Select(s => new SettledSuspect(s, s.Part, s.Fault, "by the readings alone"))
            .FirstOrDefault();

    /// <summary>The last note that begins with "found" and names a part of the sheet; null when there is none.</summary>
    public static FoundBefore? Note(JobDealings dealings, Circuit circuit) =>
        dealings
            .Counting.OfType<NoteWritten>()
            .Select(n => FoundText.ReadNote(n.Text, circuit))
            .OfType<FoundBefore>()
            .LastOrDefault();

    private static SettledSuspect? ByNote(DiagnosisResult diagnosis, JobDealings dealings, Circuit circuit) =>
        Note(dealings, circuit) is { } found
        && diagnosis.Suspects.FirstOrDefault(s => s.Second is null && s.Group.Contains(found.Part)) is { } suspect
            ? new(suspect, found.Part, FaultOf(suspect, found.Part, found.Mode), "by the note that says what was found")
            : null;

    private static SettledSuspect? ByParts(DiagnosisResult diagnosis, IEnumerable<string> parts, string because)
    {
        var texts = parts.ToList();
        return (
            from suspect in diagnosis.Suspects
            from part in suspect.Group
            where texts.Any(t => Names(t, part))
            select new SettledSuspect(suspect, part, FaultOf(suspect, part, null), because)
        ).FirstOrDefault();
    }

    /// <summary>True when the text names the designator as a word of its own: "100k 1 W, R10" names R10, not R1.</summary>
    internal static bool Names(string text, string designator) =>
        Regex.IsMatch(
            text,
            $@"(?<![\p{{L}}\p{{N}}]){Regex.Escape(designator)}(?![\p{{L}}\p{{N}}])",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
        );

    private static Fault FaultOf(Suspect suspect, string part, FailureMode? mode) =>
        suspect.Modes.Select(m => m.Fault).FirstOrDefault(f => f.Part == part && (mode is null || f.Mode == mode))
        ?? suspect.Fault;
}
