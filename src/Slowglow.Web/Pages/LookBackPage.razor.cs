using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.LookingBack;
using Slowglow.Web.LookingBack;
using Slowglow.Web.Papers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.LookingBack;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.Pages;

/// <summary>Four charts of what the shop did, each with its table and with what is not in it.</summary>
public sealed partial class LookBackPage
{
    private static readonly int[] Spans = [3, 6, 12, 24, 60];
    private int months = 12;
    private string currency = "";
    private LookBack? back;

    [Inject]
    private ReadLookBack Read { get; set; } = null!;

    [Inject]
    private ReadSettings Settings { get; set; } = null!;

    private string Summary =>
        back is null ? "Reading the book."
        : back.Jobs == 0 ? "No job went home in these months: the charts fill as jobs are handed over."
        : back.Jobs == 1 ? "From one job that went home: too few to say much."
        : $"From {back.Jobs} jobs that went home.{(back.Jobs < 20 ? " Few: a single job moves these figures." : "")}";

    protected override async Task OnInitializedAsync()
    {
        currency = ((await Settings.RunAsync()).Rules ?? ExampleRules.Rules).Currency;
        back = await Read.RunAsync(months);
    }

    private async Task ReadAsync(object? chosen)
    {
        months = int.TryParse(chosen as string, CultureInfo.InvariantCulture, out var span) ? span : months;
        back = await Read.RunAsync(months);
    }

    private static IReadOnlyList<IReadOnlyList<string>> EarnedRows(LookBack seen) =>
        [
            .. seen.Months.Select(m =>
                (IReadOnlyList<string>)
                    [
                        Month(m),
                        Money.Figure(m.Earned),
                        Hours(m.Hours),
                        m.PerHour is { } figure ? Each(figure) : "-",
                        Inv(m.Jobs),
                        Inv(m.WithoutHours),
                    ]
            ),
        ];

    private static IReadOnlyList<IReadOnlyList<string>> WaitRows(LookBack seen) =>
        [
            .. seen.Waits.Select(w =>
                (IReadOnlyList<string>)[Waited(w.For), Days(seen, w.Mean), Days(seen, w.Median), Days(seen, w.Slowest)]
            ),
            ["the whole stay", Days(seen, seen.Waits.Sum(w => w.Mean)), "", ""],
        ];

    private static IReadOnlyList<IReadOnlyList<string>> HourRows(LookBack seen) =>
        [
            .. seen.Months.Select(m =>
                (IReadOnlyList<string>)
                    [Month(m), Hours(m.Hours), Hours(m.ChargedHours), m.Hours > 0 ? Share(m.ChargedHours / m.Hours) : "-"]
            ),
        ];

    private static IReadOnlyList<Bar> HourBars(LookBack seen) =>
        [
            .. seen.Months.SelectMany(m =>
                new Bar[]
                {
                    new(Month(m) + ", worked", (double)m.Hours, Hours(m.Hours)),
                    new("charged", (double)m.ChargedHours, Hours(m.ChargedHours), true),
                }
            ),
        ];

    private static IReadOnlyList<IReadOnlyList<string>> PromiseRows(LookBack seen)
    {
        var all = seen.Promises.Sum(p => p.Jobs);
        return
        [
            .. seen.Promises.Select(p =>
                (IReadOnlyList<string>)[p.Words, Inv(p.Jobs), all == 0 ? "-" : Share((decimal)p.Jobs / all)]
            ),
        ];
    }

    private static string Waited(WaitsFor waits) =>
        waits switch
        {
            WaitsFor.Us => "us",
            WaitsFor.Customer => "the customer's answer",
            WaitsFor.Parts => "parts",
            _ => "collection",
        };

    private static string Month(MonthBack month) => month.Month.ToString("MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A dash when no job went home: nothing was waited for, but nobody knows how long.</summary>
    private static string Days(LookBack seen, double days) =>
        seen.Jobs == 0
            ? "-"
            : days.ToString("0.0", CultureInfo.InvariantCulture) + (days is >= 0.95 and < 1.05 ? " day" : " days");

    private static string Hours(decimal hours) => hours.ToString("0.#", CultureInfo.InvariantCulture) + " h";

    private static string Share(decimal share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static string Each(decimal perHour) => Money.Figure(decimal.Round(perHour, 2, MidpointRounding.AwayFromZero));

    private static string Inv(int count) => count.ToString(CultureInfo.InvariantCulture);
}
