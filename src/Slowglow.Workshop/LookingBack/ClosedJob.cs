using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.LookingBack;

/// <summary>A job that went home, in the figures that a shop looks back at.</summary>
/// <param name="Day">It was handed over.</param>
/// <param name="Minutes">Worked on it.</param>
/// <param name="ChargedHours">Hours on lines of labour, of invoices less credit notes.</param>
/// <param name="Net">Invoiced less credited, without tax, in the currency of its papers.</param>
/// <param name="PartsCost">What the parts fitted cost the shop.</param>
/// <param name="Waited">Days that it waited for each; the four add up to the whole stay.</param>
/// <param name="DaysLate">Days from the last promise to the day it was ready; negative = early; null without a promise.</param>
public sealed record ClosedJob(
    int Number,
    DateOnly Day,
    int Minutes,
    decimal ChargedHours,
    decimal Net,
    decimal PartsCost,
    IReadOnlyDictionary<WaitsFor, double> Waited,
    int? DaysLate
)
{
    /// <summary>What is left for the hours: net less parts at cost.</summary>
    public decimal Earned => Net - PartsCost;

    /// <summary>Null for a job that was not handed over.</summary>
    /// <param name="promised">The last promise; null when there was none.</param>
    /// <param name="day">The shop's day of a moment.</param>
    public static ClosedJob? Of(
        int number,
        IEnumerable<TimelineEntry> timeline,
        IReadOnlyList<Paper> papers,
        DateTimeOffset? promised,
        Func<DateTimeOffset, DateOnly> day
    )
    {
        var dealings = JobDealings.After(timeline);
        if (dealings.Counting.OfType<HandedOver>().LastOrDefault() is not { } handed)
        {
            return null;
        }

        var ready = dealings.Counting.LastOrDefault(e => e is MarkedReady)?.At ?? handed.At;
        return new(
            number,
            day(handed.At),
            dealings.Hours.Sum(h => h.Minutes),
            papers.Sum(p => Sign(p) * p.Priced.Lines.Where(l => l.Line.Kind == LineKind.Labour).Sum(Hours)),
            papers.Sum(p => Sign(p) * p.Priced.Net),
            dealings.Fitted.Sum(f => f.Quantity * f.CostEach),
            WaitedFor(dealings.Counting, handed),
            promised is { } last ? day(ready).DayNumber - day(last).DayNumber : null
        );
    }

    private static decimal Sign(Paper paper) => paper.Kind == PaperKind.CreditNote ? -1 : 1;

    // A credit takes back a part of a line's amount, and so many of its hours.
    private static decimal Hours(PricedLine line) =>
        line.Line.UnitPrice == 0 ? line.Line.Quantity : line.Amount / line.Line.UnitPrice;

    private static Dictionary<WaitsFor, double> WaitedFor(IReadOnlyList<TimelineEntry> counting, TimelineEntry handed)
    {
        Dictionary<WaitsFor, double> days = [];
        for (var i = 0; i + 1 < counting.Count && counting[i].Sequence < handed.Sequence; i++)
        {
            var waits = WaitsForWords.Of(StateRules.After(counting.Take(i + 1)));
            days[waits] = days.GetValueOrDefault(waits) + Math.Max(0, (counting[i + 1].At - counting[i].At).TotalDays);
        }

        return days;
    }
}
