using Microsoft.EntityFrameworkCore;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs.History;

/// <summary>
/// What repaired jobs on the same sheet came down to, from the notes in their timelines that begin with "found". A note "history off"
/// in a job keeps it out of that job's diagnosis, "history on" lets it in again.
/// </summary>
internal static class JobHistory
{
    private static readonly JobState[] Repaired = [JobState.OnSoak, JobState.ReadyToCollect, JobState.HandedOver];

    /// <summary>Null when there is no history, or when the job's technician has switched it off.</summary>
    public static async Task<PastJobs?> OfAsync(ShopDatabase database, Job job, Circuit circuit, CancellationToken cancel)
    {
        if (job.Sheet is not { } sheet || IsOff(job.Timeline))
        {
            return null;
        }

        var others = await database
            .Jobs.AsNoTracking()
            .Where(j => (j.Sheet!.Id == sheet.Id || j.Sheet.Title == sheet.Title) && j.Number != job.Number)
            .Include(j => j.Timeline)
            .ToListAsync(cancel);
        return Of(others, circuit);
    }

    /// <summary>Counts over the repaired ones among these jobs; null when none says what was found.</summary>
    public static PastJobs? Of(IEnumerable<Job> jobs, Circuit circuit)
    {
        var found = jobs.Where(j => Repaired.Contains(j.Standing().State))
            .Select(j => Cause(j, circuit))
            .OfType<FoundBefore>()
            .GroupBy(f => (f.Part, f.Mode))
            .Select(g => new FoundBefore(g.Key.Part, g.Key.Mode, g.Sum(f => f.Jobs)))
            .OrderByDescending(f => f.Jobs)
            .ThenBy(f => f.Part, StringComparer.Ordinal)
            .ToList();
        return found.Count == 0 ? null : new PastJobs(found);
    }

    /// <summary>The last word counts: an earlier find that turned out to be none is put right by a later note.</summary>
    private static FoundBefore? Cause(Job job, Circuit circuit) =>
        Notes(job.Timeline).Select(n => FoundText.ReadNote(n.Text, circuit)).OfType<FoundBefore>().LastOrDefault();

    private static bool IsOff(IEnumerable<TimelineEntry> timeline) =>
        Notes(timeline)
            .Select(n => n.Text.Trim().TrimEnd('.').ToUpperInvariant())
            .LastOrDefault(t => t is "HISTORY OFF" or "HISTORY ON") == "HISTORY OFF";

    private static IEnumerable<NoteWritten> Notes(IEnumerable<TimelineEntry> timeline) =>
        timeline.OrderBy(e => e.Sequence).OfType<NoteWritten>();
}
