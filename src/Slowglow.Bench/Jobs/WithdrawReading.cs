using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Takes a reading back: it stays in the timeline and counts no more.</summary>
public sealed class WithdrawReading(OpenJob open, TimelineWriter timeline)
{
    /// <param name="reading">Sequence of the reading in the timeline.</param>
    public async Task<IReadOnlyList<Finding>> RunAsync(int jobNumber, int reading, CancellationToken cancel = default)
    {
        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value is null)
        {
            return opened.Findings;
        }

        if (opened.Value.Standing.Readings.All(r => r.Sequence != reading))
        {
            return
            [
                new(
                    Severity.Error,
                    Place.None,
                    "That reading has been withdrawn already, or never was taken.",
                    "Look in the timeline."
                ),
            ];
        }

        var stored = await timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new ReadingWithdrawn
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Reading = reading,
                },
            cancel
        );
        return stored.Findings;
    }
}
