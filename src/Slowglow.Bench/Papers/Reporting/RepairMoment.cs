using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>Where in a timeline the repair stands: what was measured before it shows the fault, what was measured after it the cure.</summary>
internal static class RepairMoment
{
    /// <summary>
    /// Sequence of the first part fitted; where none was, of the first time that the unit went on soak or was called ready; beyond the end otherwise.
    /// </summary>
    public static int Of(JobDealings dealings) =>
        dealings.Counting.FirstOrDefault(e => e is PartFitted)?.Sequence
        ?? dealings
            .Counting.FirstOrDefault(e => e is MarkedReady or StateChanged { State: JobState.OnSoak or JobState.ReadyToCollect })
            ?.Sequence
        ?? int.MaxValue;
}
