using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Photographs;

/// <summary>Stores a photograph and enters it on the timeline of a job, in one transaction.</summary>
public sealed class AddPhoto(JobLedger ledger, TimeProvider clock)
{
    /// <summary>Findings when it is no photograph, or too large.</summary>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        TakenPhoto photo,
        string? by = null,
        CancellationToken cancel = default
    ) => ledger.WriteAsync(jobNumber, by, _ => Task.FromResult(PhotoFiles.Draft(photo, clock.GetUtcNow())), cancel);
}
