namespace Slowglow.Workshop.Jobs;

/// <summary>Says a state as it stands on the card.</summary>
public static class JobStateWords
{
    public static string Say(JobState state) =>
        state switch
        {
            JobState.BookedIn => "booked in",
            JobState.OnTheBench => "on the bench",
            JobState.AwaitingParts => "awaiting parts",
            JobState.AwaitingCustomer => "awaiting the customer",
            JobState.OnSoak => "on soak",
            JobState.ReadyToCollect => "ready to collect",
            JobState.HandedOver => "handed over",
            _ => state.ToString(),
        };

    /// <summary>The state of those words, in any case; null when it is none of them.</summary>
    public static JobState? Read(string words) =>
        Enum.GetValues<JobState>()
            .Select(s => (JobState?)s)
            .FirstOrDefault(s => string.Equals(Say(s!.Value), words.Trim(), StringComparison.OrdinalIgnoreCase));
}
