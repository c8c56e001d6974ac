using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.Jobs;

/// <summary>How far a job has come, from what happened to it.</summary>
public static class StateRules
{
    /// <summary>Where entries that count leave it. A state chosen by hand holds until something happens that moves the job on.</summary>
    public static JobState After(IEnumerable<TimelineEntry> entries)
    {
        var state = JobState.BookedIn;
        Dictionary<int, int[]> open = [];
        foreach (var entry in Striking.Counting(entries))
        {
            state = Next(state, entry, open);
        }

        return state;
    }

    private static JobState Next(JobState state, TimelineEntry entry, Dictionary<int, int[]> open)
    {
        switch (entry)
        {
            case StateChanged changed:
                return changed.State;
            case TimerStarted or HoursWorked when state == JobState.BookedIn:
                return JobState.OnTheBench;
            case QuoteGiven:
                return JobState.AwaitingCustomer;
            case QuoteAnswered when state == JobState.AwaitingCustomer:
                return open.Count > 0 ? JobState.AwaitingParts : JobState.OnTheBench;
            case PartsOrdered { What.Blocks: true } ordered:
                open[ordered.Sequence] = [.. ordered.What.Lines.Select(l => l.Quantity)];
                return state is JobState.AwaitingCustomer ? state : JobState.AwaitingParts;
            case PartsArrived arrived when open.TryGetValue(arrived.What.Order, out var missing):
                return Arrive(state, arrived, missing, open);
            case MarkedReady:
                return JobState.ReadyToCollect;
            case HandedOver:
                return JobState.HandedOver;
            default:
                return state;
        }
    }

    private static JobState Arrive(JobState state, PartsArrived arrived, int[] missing, Dictionary<int, int[]> open)
    {
        for (var i = 0; i < Math.Min(missing.Length, arrived.What.Pieces.Count); i++)
        {
            missing[i] -= arrived.What.Pieces[i];
        }

        if (missing.All(m => m <= 0))
        {
            open.Remove(arrived.What.Order);
        }

        return state == JobState.AwaitingParts && open.Count == 0 ? JobState.OnTheBench : state;
    }
}
