using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Jobs.Demo;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Photographs;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Timeline;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The report begun from the bench, and every paper of a job as a file to be looked at.</summary>
public sealed class ReportTests(Chromium chromium)
{
    private const int Solving = 120_000;
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Report_is_filled_from_the_bench_looked_over_and_printed_with_photographs()
    {
        // Without the jobs that went home: the first invoice here is number 1.
        await using var bench = await BenchUnderTest.StartAsync(DemoFolders.Find());
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url);
        var logo = await LogoAsync(counter.Page);
        Assert.Empty(await bench.Services.GetRequiredService<ChooseLogo>().RunAsync("bell.png", logo, Cancel));
        var job = await RepairedAsync(bench.Services, await PhotographsAsync(counter.Page));
        await counter.GoAsync($"{bench.Url}/job/{job}/papers");
        await counter.FillAsync(("report-done", "R10 replaced by a metal film of 2 W."));

        await counter.PressAsync("report", "Fill in from the bench");

        await Expect(counter.Page.Locator("#report-basis")).ToContainTextAsync("Settled on R10", new() { Timeout = Solving });
        await Expect(counter.Page.Locator("#report-found"))
            .ToHaveValueAsync(new System.Text.RegularExpressions.Regex("R10 drifted up"));
        await Expect(counter.Page.Locator("#report-why"))
            .ToHaveValueAsync(new System.Text.RegularExpressions.Regex("your \"thin\""));
        await Expect(counter.Page.Locator("#report-readings"))
            .ToHaveValueAsync(new System.Text.RegularExpressions.Regex("V1.6, DC; 33.1 V; 152 V; 1"));
        await Expect(counter.Page.Locator("#report-done")).ToHaveValueAsync("R10 replaced by a metal film of 2 W.");
        var report = counter.Card("report");
        await Expect(report.GetByLabel("held upright (WebP: cannot be printed)")).ToBeDisabledAsync();
        await report.GetByLabel("the drawing as it was found", new() { Exact = true }).CheckAsync();
        await report.GetByLabel("the second one", new() { Exact = true }).CheckAsync();
        await counter.FillAsync(("report-advice", "Give it half a minute on standby before playing."));
        await counter.PressAsync("report", "Write the report");
        await counter.SaysAsync("R10 drifted up");
        await counter.Page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "report-1440.png"), FullPage = true });
        await counter.Page.SetViewportSizeAsync(820, 900);
        await counter.Page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "report-820.png"), FullPage = true });
        await KeepAsync(
            counter.Page,
            "receipt",
            "label",
            "report",
            "invoice-1",
            "credit-note-1",
            "quote-" + await QuoteOf(bench.Services, job)
        );
    }

    /// <summary>An invented sign, drawn by the browser.</summary>
    private static async Task<byte[]> LogoAsync(IPage page) =>
        Convert.FromBase64String(
            await page.EvaluateAsync<string>(
                """
                () => { const c = document.createElement('canvas'); c.width = 640; c.height = 200; const d = c.getContext('2d');
                  d.fillStyle = '#fff'; d.fillRect(0, 0, 640, 200); d.strokeStyle = '#8a3b12'; d.lineWidth = 14;
                  d.beginPath(); d.arc(100, 100, 70, 0, 7); d.moveTo(60, 130); d.lineTo(85, 60); d.lineTo(115, 140); d.lineTo(140, 70); d.stroke();
                  d.fillStyle = '#222'; d.font = 'bold 72px sans-serif'; d.fillText('Bellwether', 200, 125);
                  return c.toDataURL('image/png').split(',')[1]; }
                """
            )
        );

    /// <summary>What the browser itself draws, in each of the three kinds that are taken.</summary>
    private static async Task<IReadOnlyList<TakenPhoto>> PhotographsAsync(IPage page)
    {
        const string asWebp = """
            () => { const c = document.createElement('canvas'); c.width = 300; c.height = 400; const d = c.getContext('2d');
              d.fillStyle = '#a60'; d.fillRect(0, 0, 300, 400); d.fillStyle = '#fff'; d.fillText('WebP', 20, 40);
              return c.toDataURL('image/webp').split(',')[1]; }
            """;
        var webp = Convert.FromBase64String(await page.EvaluateAsync<string>(asWebp));
        var jpeg = await page.ScreenshotAsync(new() { Type = ScreenshotType.Jpeg, Quality = 80 });
        var png = await page.ScreenshotAsync(
            new()
            {
                Clip = new() { Width = 500, Height = 700 },
            }
        );
        return [new(jpeg, "the drawing as it was found"), new(webp, "held upright"), new(png, "the second one")];
    }

    private static async Task<int> RepairedAsync(IServiceProvider services, IReadOnlyList<TakenPhoto> photographs)
    {
        var jobs = await services.GetRequiredService<ListJobs>().RunAsync(Cancel);
        var job = jobs.Single(j => j.Unit.Contains("Kittiwake", StringComparison.Ordinal)).Number;
        var enter = services.GetRequiredService<EnterOnTimeline>();
        foreach (var photograph in photographs)
        {
            Assert.Empty((await services.GetRequiredService<AddPhoto>().RunAsync(job, photograph, null, Cancel)).Findings);
        }

        var today = ShopDay.Today(TimeProvider.System);
        ChargeLine[] repair =
        [
            new(LineKind.Labour, "Finding the fault and mending it, cleaning the sockets of V1 and V2", 1.5m, 60, "standard"),
            new(LineKind.Part, "100k 2 W metal film, R10", 1, 1.2m, "standard"),
            new(LineKind.Part, "Mains lead with plug", 1, 9.5m, "reduced"),
        ];
        ChargeLine[] valves = [.. repair, new(LineKind.Part, "EL84, a matched pair", 1, 38, "standard", 2)];
        var quote = services.GetRequiredService<GiveQuote>();
        var given = await quote.RunAsync(
            job,
            [("repair", repair), ("repair, and new output valves", valves)],
            "Both valves still measure well.",
            null,
            Cancel
        );
        Assert.Empty(given.Findings);
        TimelineEntry[] entries =
        [
            new QuoteAnswered { What = new(given.Value!.Sequence, "repair", "Ottoline Marsh", Way.Telephone, "yes please") },
            new MoneyTaken
            {
                What = new(new Amount(45, "EUR"), Workshop.Accounts.PaidBy.Card, Workshop.Accounts.PaidFor.Deposit, today, ""),
            },
            new PartFitted { What = new("100k 2 W metal film, R10", 1, 0.6m, 1.2m, "bin 3") },
            new HoursWorked { What = new("bench", 80, "finding the fault, fitting, soak", null) },
            new ReadingTaken { Line = "V1.6 = 152 V", Setup = "bench" },
            new ReadingTaken { Line = "HT1 = 311 V", Setup = "bench" },
            new SafetyTested { What = Tested(today) },
        ];
        foreach (var entry in entries)
        {
            Assert.Empty((await enter.RunAsync(job, () => entry, null, Cancel)).Findings);
        }

        var issued = await services.GetRequiredService<IssueInvoice>().RunAsync(job, repair, null, Cancel);
        Assert.Empty(issued.Findings);
        var credited = await services
            .GetRequiredService<CreditInvoice>()
            .RunAsync(job, 1, [new CreditedAmount(2, 9.5m)], "The lead was theirs.", null, Cancel);
        Assert.Empty(credited.Findings);
        return job;
    }

    private static SafetyTest Tested(DateOnly today) =>
        new(
            SafetySets.Names[0],
            "I",
            [
                new("earth bond", 0.12, "ohm", false, 0.3, "as entered"),
                new("insulation resistance", 20, "megohm", true, 1, "as entered"),
            ],
            true,
            true,
            "tester 7",
            today.AddMonths(5),
            "Bea",
            today
        );

    private static async Task<string> QuoteOf(IServiceProvider services, int job) =>
        (await services.GetRequiredService<ReadJobFile>().RunAsync(job, Cancel))
            .Value!.Dealings.Quotes[0]
            .Sequence.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static async Task KeepAsync(IPage page, params IReadOnlyList<string> papers)
    {
        foreach (var paper in papers)
        {
            var answer = await page.APIRequest.GetAsync($"{page.Url}/{paper}.pdf");
            Assert.Equal("application/pdf", answer.Headers["content-type"]);
            await File.WriteAllBytesAsync(
                Path.Combine(Pictures, $"paper-{paper.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-')}.pdf"),
                await answer.BodyAsync(),
                Cancel
            );
        }
    }
}
