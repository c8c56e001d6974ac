using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Papers;
using Slowglow.Storage.Sqlite;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Keeping;

public sealed class BackupTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Copy_made_while_entries_are_written_is_whole_and_comes_back()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await new IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(100)], cancel: Cancel);
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(
            async () =>
            {
                while (!stop.IsCancellationRequested)
                {
                    await floor.DoAsync(job, new NoteWritten { Text = "on and on" });
                }
            },
            Cancel
        );
        var copies = new SqliteCopies(under.FilePath);
        var copy = await new BackupShop(copies).RunAsync(under.FilePath + ".backup", Cancel);
        await stop.CancelAsync();
        await writing;

        Assert.Empty(copy.Findings);
        Assert.Equal((1, 1), (copy.Value!.Rows.Jobs, copy.Value.Rows.Papers));
        await using (var inCopy = new SqliteShop(copy.Value.Path).CreateDbContext())
        {
            var sequences = await inCopy.Timeline.OrderBy(e => e.Sequence).Select(e => e.Sequence).ToListAsync(Cancel);
            Assert.Equal(Enumerable.Range(1, copy.Value.Rows.Entries), sequences);
        }

        Assert.NotEmpty((await new BackupShop(copies).RunAsync(copy.Value.Path, Cancel)).Findings);
        Assert.Empty((await new RestoreShop(copies).RunAsync(copy.Value.Path, Cancel)).Findings);
        Assert.Equal(copy.Value.Rows.Entries, (await floor.FileAsync(job)).Job.Timeline.Count);
        Assert.True(File.Exists(under.FilePath + ".before-1"));
        await floor.DoAsync(job, new NoteWritten { Text = "after the restore" });
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Damaged_copy_is_refused_and_the_shop_stays(bool halved)
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var bad = under.FilePath + ".bad";
        if (halved)
        {
            await new BackupShop(new SqliteCopies(under.FilePath)).RunAsync(bad, Cancel);
            var bytes = await File.ReadAllBytesAsync(bad, Cancel);
            await File.WriteAllBytesAsync(bad, bytes[..(bytes.Length / 2)], Cancel);
        }
        else
        {
            await File.WriteAllTextAsync(bad, "solder, wick, two fuses", Cancel);
        }

        Assert.NotEmpty((await new RestoreShop(new SqliteCopies(under.FilePath)).RunAsync(bad, Cancel)).Findings);
        Assert.Single((await floor.FileAsync(job)).Job.Timeline);
    }

    [Fact]
    public async Task Backup_to_where_nothing_can_be_written_is_told_in_a_sentence()
    {
        await using var under = await SqliteUnderTest.StartAsync();

        var copy = await new BackupShop(new SqliteCopies(under.FilePath)).RunAsync("/proc/nowhere/shop.backup", Cancel);

        Assert.StartsWith("The backup could not be written", Assert.Single(copy.Findings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_many_nightly_backups_are_kept_as_the_shop_wants()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var folder = under.FilePath + "-backups";
        for (var day = 1; day <= 5; day++)
        {
            var clock = new FixedClock(new DateTimeOffset(2026, 11, day, 3, 0, 0, TimeSpan.Zero));
            var nightly = new NightlyBackups(new BackupShop(new SqliteCopies(under.FilePath)), clock);
            Assert.Empty(await nightly.RunAsync(folder, 3, Cancel));
            Assert.Empty(await nightly.RunAsync(folder, 3, Cancel));
        }

        string[] kept = ["slowglow-2026-11-03.backup", "slowglow-2026-11-04.backup", "slowglow-2026-11-05.backup"];
        Assert.Equal(kept, Directory.GetFiles(folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Export_holds_every_job_and_the_accountants_tables_add_up()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Name = "=cmd, \"Ada\"" });
        await new IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(100)], cancel: Cancel);
        await new CreditInvoice(floor.Ledger).RunAsync(job, 1, [new(0, 40)], "goodwill", cancel: Cancel);
        await floor.DoAsync(job, new MoneyTaken { What = floor.Pay(50) });
        await floor.DoAsync(job, new MoneyTaken { What = floor.Pay(99) });
        await floor.DoAsync(job, new EntryStruck { What = new(5, "another job") });

        var files = (await new ExportShop(under.Shop, TimeProvider.System).RunAsync(under.FilePath + "-export", Cancel)).Value!;

        using var json = System.Text.Json.JsonDocument.Parse(await File.ReadAllTextAsync(files[0], Cancel));
        var exported = json.RootElement.GetProperty("jobs")[0];
        Assert.Equal(job, exported.GetProperty("number").GetInt32());
        Assert.Equal(6, exported.GetProperty("timeline").GetArrayLength());
        var papers = (await File.ReadAllTextAsync(files[1], Cancel)).Split("\r\n");
        Assert.Contains("\"'=cmd, \"\"Ada\"\"\"", papers[1], StringComparison.Ordinal);
        var credit = papers.Single(p => p.StartsWith("credit note", StringComparison.Ordinal));
        Assert.EndsWith("-40,-8,-48,EUR", Plain(credit), StringComparison.Ordinal);
        var money = (await File.ReadAllTextAsync(files[2], Cancel)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains(",50,EUR,card,", Assert.Single(money.Skip(1)), StringComparison.Ordinal);
    }

    private static string Plain(string row) =>
        string.Join(
            ',',
            row.Split(',')
                .Select(c =>
                    decimal.TryParse(c, System.Globalization.CultureInfo.InvariantCulture, out var d)
                        ? d.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)
                        : c
                )
        );
}
