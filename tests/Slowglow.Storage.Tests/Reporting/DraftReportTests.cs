using Slowglow.Bench.Jobs;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Papers.Reporting;
using Slowglow.Sheets;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Reporting;

/// <summary>The demo combo: one anode load, 100k, reads its volts as if it had drifted to eight times that.</summary>
public sealed class DraftReportTests
{
    private static readonly BenchUnits Units = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Fault_cause_and_readings_before_and_after_come_from_the_job()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var (floor, job, read) = await ComboAsync(under);
        await floor.DoAsync(job, new PartFitted { What = new("100k 1 W metal film, R10", 1, 0.4m, 1m, "bin 3") });
        await floor.DoAsync(job, new HoursWorked { What = new("bench", 40, "board out and back", null) });
        var take = new TakeReading(new OpenJob(under.Shop, Units), new TimelineWriter(floor.Ledger));
        Assert.NotNull((await take.RunAsync(job, "V1.6 = 152 V", Cancel)).Value);

        var draft = (await read.RunAsync(job, Cancel)).Value!;

        // Sheet, readings and complaint are those of demo/kittiwake-15; 8 times 100k is what 33.1 V on that anode asks for.
        Assert.StartsWith("R10 drifted up", draft.Report.Found, StringComparison.Ordinal);
        Assert.Contains("your \"thin\"", draft.Report.Why, StringComparison.Ordinal);
        Assert.Contains("First channel gives", draft.Report.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("Second channel is as it should be", draft.Report.Why, StringComparison.Ordinal);
        Assert.DoesNotContain("you read", draft.Report.Why, StringComparison.Ordinal);
        Assert.Equal("Replaced: 100k 1 W metal film, R10. Board out and back.", draft.Report.Done);
        var anode = draft.Report.Readings.Single(r => r.Where == "V1.6, DC");
        Assert.Equal(("33.1 V", "152 V", "140 V to 168 V"), (anode.Before, anode.After, anode.Belongs));
        var rail = draft.Report.Readings.Single(r => r.Where == "HT1, DC");
        Assert.Equal(("309 V", ""), (rail.Before, rail.After));
        Assert.Contains(
            "Settled on R10 by the part that was fitted; weighed from 3 readings",
            draft.Basis,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Note_that_says_what_was_found_goes_before_the_readings()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var (floor, job, read) = await ComboAsync(under);
        await floor.DoAsync(job, new NoteWritten { Text = "Found: V1 section 2 gassy" });

        var draft = (await read.RunAsync(job, Cancel)).Value!;

        Assert.StartsWith("V1 section 2 gassy", draft.Report.Found, StringComparison.Ordinal);
        Assert.Contains("by the note that says what was found", draft.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Job_without_a_drawing_gets_its_notes_parts_and_lines_and_no_reason()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await floor.DoAsync(job, new NoteWritten { Text = "found choke open" });
        var read = new DraftReport(new ReadJobFile(under.Shop, TimeProvider.System), new OpenJob(under.Shop, Units));

        var draft = (await read.RunAsync(job, Cancel)).Value!;

        Assert.Equal(("Choke open.", "", ""), (draft.Report.Found, draft.Report.Why, draft.Report.Done));
        Assert.Contains("no drawing", draft.Basis, StringComparison.Ordinal);
        Assert.Null((await read.RunAsync(99, Cancel)).Value);
    }

    private static async Task<(ShopFloor Floor, int Job, DraftReport Read)> ComboAsync(SqliteUnderTest under)
    {
        var folder = DemoFolder("kittiwake-15");
        var demo = await new OpenDemo(under.Shop, Units, TimeProvider.System).RunAsync([folder], Cancel);
        Assert.Equal((1, 0), (demo.Jobs, demo.Findings.Count(f => f.Severity == Severity.Error)));
        var read = new DraftReport(new ReadJobFile(under.Shop, TimeProvider.System), new OpenJob(under.Shop, Units));
        return (new ShopFloor(under.Shop), 1001, read);
    }

    private static string DemoFolder(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!Directory.Exists(Path.Combine(folder.FullName, "demo", name)))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "demo", name);
    }
}
