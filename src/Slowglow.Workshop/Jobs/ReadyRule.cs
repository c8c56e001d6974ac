namespace Slowglow.Workshop.Jobs;

/// <summary>When a unit may be called ready and when it may go home.</summary>
public static class ReadyRule
{
    private const int ShortestReason = 10;

    /// <summary>A failed or missing safety test wants a written reason.</summary>
    public static IReadOnlyList<Objection> LookReady(JobDealings dealings, string reason)
    {
        if (dealings.SafetyTest is { Passed: true } || reason.Trim().Length >= ShortestReason)
        {
            return [];
        }

        var text = dealings.SafetyTest is { } failed
            ? $"The last safety test failed: {string.Join(", ", failed.Failures)}."
            : "There is no safety test on record.";
        return [new(text, $"Test it, or write why it is ready all the same ({ShortestReason} characters or more).")];
    }

    /// <summary>A unit goes home when it is ready, or when the owner takes it unrepaired.</summary>
    public static IReadOnlyList<Objection> LookHandover(JobDealings dealings, string to) =>
        string.IsNullOrWhiteSpace(to) ? [new("Nobody is named who takes it.", "Who it was handed to.")]
        : dealings.Handover is not null ? [new("It has been handed over already.", "Look in the timeline.")]
        : dealings.ReadySince is null ? [new("The unit has not been marked ready.", "Mark it ready first, with its safety test.")]
        : [];
}
