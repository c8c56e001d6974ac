using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Takes down what happened to a job, when the shop's rules let it stand.</summary>
public sealed class EnterOnTimeline(JobLedger ledger)
{
    /// <param name="entry">Makes the entry; asked again when another bench was quicker.</param>
    /// <param name="by">Who writes it; null where the shop is one person.</param>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        Func<TimelineEntry> entry,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            job =>
            {
                var made = entry();
                made.Place(jobNumber, 0, default, by);
                return Task.FromResult(job.Ask(made));
            },
            cancel
        );
}
