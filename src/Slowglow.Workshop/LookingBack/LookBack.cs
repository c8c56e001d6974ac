using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.LookingBack;

/// <summary>What the shop did, from jobs that went home.</summary>
/// <param name="WithoutPromise">Jobs that nothing was promised for: they are in no count of promises.</param>
public sealed record LookBack(
    int Jobs,
    IReadOnlyList<MonthBack> Months,
    IReadOnlyList<WaitBack> Waits,
    IReadOnlyList<PromiseBack> Promises,
    int WithoutPromise
)
{
    private static readonly (int UpTo, string Words)[] Lateness =
    [
        (0, "on the day or before"),
        (3, "1 to 3 days late"),
        (7, "4 to 7 days late"),
        (14, "8 to 14 days late"),
        (int.MaxValue, "later than that"),
    ];

    private static readonly WaitsFor[] Four = [WaitsFor.Us, WaitsFor.Customer, WaitsFor.Parts, WaitsFor.Collection];

    /// <param name="jobs">All of the span, in any order.</param>
    /// <param name="first">First month of the span; months in which nothing went home stand there empty.</param>
    /// <param name="last">Last month.</param>
    public static LookBack Over(IReadOnlyList<ClosedJob> jobs, DateOnly first, DateOnly last)
    {
        List<MonthBack> months = [];
        for (var month = new DateOnly(first.Year, first.Month, 1); month <= last; month = month.AddMonths(1))
        {
            months.Add(Month(month, [.. jobs.Where(j => j.Day.Year == month.Year && j.Day.Month == month.Month)]));
        }

        var promised = jobs.Where(j => j.DaysLate is not null).Select(j => j.DaysLate!.Value).ToList();
        return new(
            jobs.Count,
            months,
            [.. Four.Select(w => Wait(w, [.. jobs.Select(j => j.Waited.GetValueOrDefault(w)).Order()]))],
            [
                .. Lateness.Select(
                    (step, i) =>
                        new PromiseBack(step.Words, promised.Count(d => d <= step.UpTo && (i == 0 || d > Lateness[i - 1].UpTo)))
                ),
            ],
            jobs.Count - promised.Count
        );
    }

    private static MonthBack Month(DateOnly month, IReadOnlyList<ClosedJob> jobs)
    {
        var timed = jobs.Where(j => j.Minutes > 0).ToList();
        return new(
            month,
            jobs.Count,
            timed.Sum(j => j.Earned),
            timed.Sum(j => j.Minutes) / 60m,
            timed.Sum(j => j.ChargedHours),
            jobs.Count - timed.Count
        );
    }

    private static WaitBack Wait(WaitsFor waits, IReadOnlyList<double> days) =>
        days.Count == 0 ? new(waits, 0, 0, 0) : new(waits, days.Average(), At(days, 0.5), At(days, 0.9));

    /// <summary>Quantile by linear interpolation between the order statistics (Hyndman and Fan 1996, type 7).</summary>
    private static double At(IReadOnlyList<double> sorted, double share)
    {
        var place = share * (sorted.Count - 1);
        var below = (int)Math.Floor(place);
        var above = Math.Min(below + 1, sorted.Count - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}
