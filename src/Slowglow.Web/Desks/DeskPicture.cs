using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Drawing;
using Slowglow.Sheets;

namespace Slowglow.Web.Desks;

/// <summary>Everything the bench page shows of a job. Immutable: a change is a new picture.</summary>
/// <param name="Job">Null when there is no such job; <paramref name="Findings"/> say so.</param>
/// <param name="Layout">The sheet as a service drawing, without figures; null until it is drawn.</param>
/// <param name="Trouble">A sentence when something could not be worked out, otherwise null.</param>
public sealed record DeskPicture(
    OpenedJob? Job,
    IReadOnlyList<Finding> Findings,
    Solved<IReadOnlyList<Expectation>>? Expected = null,
    Solved<DiagnosisResult>? Diagnosis = null,
    Solved<LevelComparison?>? Levels = null,
    DrawingLayout? Layout = null,
    WorkUnderWay? Work = null,
    string? Trouble = null
)
{
    /// <summary>True when the expectations belong to another setup than the one chosen.</summary>
    public bool ExpectedStale => Expected is not null && Job is not null && Expected.For != ExpectedFor(Job);

    /// <summary>True when evidence has come in that the suspects have not been weighed against.</summary>
    public bool DiagnosisStale => Diagnosis is not null && Job is not null && Diagnosis.For != DiagnosisFor(Job);

    /// <summary>True when the levels belong to another suspect than the leading one.</summary>
    public bool LevelsStale => Levels is not null && (DiagnosisStale || Levels.For != LevelsFor(Diagnosis?.Value));

    internal static string ExpectedFor(OpenedJob job) => $"{job.Chosen.Name}: {SetupKeys.Write(job.Chosen)}";

    internal static string DiagnosisFor(OpenedJob job) =>
        FormattableString.Invariant($"evidence {job.Standing.EvidenceSequence} past {Past(job.Past)}");

    private static string Past(PastJobs? past) =>
        past is null
            ? "off"
            : string.Join(' ', past.Found.Select(f => FormattableString.Invariant($"{f.Part} {f.Mode} {f.Jobs},")));

    internal static string LevelsFor(DiagnosisResult? diagnosis) => diagnosis?.Suspects.FirstOrDefault()?.Fault.ToString() ?? "";
}
