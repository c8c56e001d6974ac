using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Collecting;

/// <summary>What is charged for goods that nobody collects, and when the owner is reminded. Local law says whether it may be.</summary>
/// <param name="FreeDays">Days after the first notice that cost nothing.</param>
/// <param name="PerDay">In the shop's currency; 0 = nothing is charged.</param>
/// <param name="Most">Never more than this; null = no end.</param>
/// <param name="RemindAfter">Days after the notice on which a reminder is due, rising.</param>
public sealed record StorageRule(int FreeDays, decimal PerDay, decimal? Most, IReadOnlyList<int> RemindAfter)
{
    public const string CheckLaw = "Check your local law before you charge storage or part with goods that are not yours.";

    /// <summary>The fee on a day, for goods whose owner was told on another.</summary>
    public Amount Fee(DateOnly told, DateOnly today, string currency)
    {
        var days = Math.Max(0, today.DayNumber - told.DayNumber - FreeDays);
        return new Amount(Math.Min(days * PerDay, Most ?? decimal.MaxValue), currency).Rounded();
    }

    /// <summary>How many reminders are due by that day.</summary>
    public int Due(DateOnly told, DateOnly today) => RemindAfter.Count(d => today.DayNumber - told.DayNumber >= d);
}
