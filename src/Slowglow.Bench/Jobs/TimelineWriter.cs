using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Adds entries of the bench to timelines. An entry is on the disk before anyone is told of it.</summary>
public sealed class TimelineWriter(JobLedger ledger)
{
    /// <summary>Stores what <paramref name="entry"/> makes of sequence and time. Two benches may write at once: the later one takes the next sequence. Findings when it could not or may not be stored.</summary>
    internal Task<Parsed<TimelineEntry>> AppendAsync(
        int jobNumber,
        Func<int, DateTimeOffset, TimelineEntry> entry,
        CancellationToken cancel
    ) =>
        ledger.WriteAsync(
            jobNumber,
            null,
            job => Task.FromResult(new Draft(entry(job.Job.Timeline.Count + 1, default), [])),
            cancel
        );
}
