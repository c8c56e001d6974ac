using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers;

/// <summary>Stops a timer: what it ran is taken down as hours, begun minutes counting.</summary>
public sealed class StopTimer(JobLedger ledger, TimeProvider clock)
{
    private const int MostMinutes = 24 * 60;

    /// <param name="timer">Sequence of the timer's start.</param>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        int timer,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            job =>
            {
                var running = job.Dealings.Timers.FirstOrDefault(t => t.Sequence == timer);
                if (running is null)
                {
                    return Task.FromResult(
                        Draft.Refused(new Objection("That timer has been stopped already.", "Look in the timeline."))
                    );
                }

                var minutes = (int)Math.Ceiling((clock.GetUtcNow() - running.Since).TotalMinutes);
                return Task.FromResult(
                    minutes > MostMinutes
                        ? Draft.Refused(
                            new Objection(
                                $"That timer has run for {minutes / 60} hours: it was forgotten.",
                                "Strike it out in the timeline and type the minutes worked."
                            )
                        )
                        : new Draft(
                            new HoursWorked { What = new(running.Start.Rate, Math.Max(1, minutes), running.Start.What, timer) },
                            []
                        )
                );
            },
            cancel
        );
}
