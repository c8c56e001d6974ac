using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Counter;

namespace Slowglow.Storage.Tests.Large;

/// <summary>How fast search, board and reminders are in a book of decades. Run on request: <c>-explicit only -class "*LargeBookBenchmark"</c>.</summary>
public sealed class LargeBookBenchmark(PostgresServer server)
{
    private const int Times = 15;
    private const double MostMilliseconds = 100;
    private static readonly string[] Typed =
    [
        "customer 31337",
        "hums since 4242",
        "s3100000",
        "99991",
        "no such words at all",
        "channel 3 maker 11",
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory(Explicit = true)]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Search_and_board_answer_in_a_tenth_of_a_second(bool postgres)
    {
        await using IShopUnderTest under = postgres
            ? await PostgresUnderTest.StartAsync(server)
            : await SqliteUnderTest.StartAsync();
        await using (var database = under.Shop.CreateDbContext())
        {
            await LargeBook.FillAsync(database, Cancel);
            Assert.Equal(LargeBook.Jobs * LargeBook.EntriesAJob, await database.Timeline.CountAsync(Cancel));
            Tell(postgres, "size", await SizeAsync(under, database) / 1e6, "MB");
        }

        var search = new SearchBook(under.Shop);
        List<double> medians = [];
        foreach (var typed in Typed)
        {
            medians.Add(await MedianAsync(() => search.RunAsync(typed, Cancel)));
            Tell(postgres, $"search \"{typed}\"", medians[^1], "ms");
        }

        medians.Add(await MedianAsync(() => new ReadBoard(under.Shop).RunAsync(Cancel)));
        Tell(postgres, "board", medians[^1], "ms");
        medians.Add(await MedianAsync(() => new ReadReminders(under.Shop, TimeProvider.System).RunAsync(Cancel)));
        Tell(postgres, "whom to remind", medians[^1], "ms");
        Assert.All(medians, m => Assert.InRange(m, 0, MostMilliseconds));
    }

    private static void Tell(bool postgres, string what, double figure, string unit) =>
        Console.Error.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"{(postgres ? "PostgreSQL" : "SQLite")} {what}: {figure:0.0} {unit}")
        );

    private static async Task<double> MedianAsync(Func<Task> ask)
    {
        List<double> took = [];
        for (var i = 0; i < Times; i++)
        {
            var clock = Stopwatch.StartNew();
            await ask();
            took.Add(clock.Elapsed.TotalMilliseconds);
        }

        return took.Order().ElementAt(Times / 2);
    }

    private static async Task<long> SizeAsync(IShopUnderTest under, ShopDatabase database) =>
        under is SqliteUnderTest sqlite
            ? new FileInfo(sqlite.FilePath).Length + new FileInfo(sqlite.FilePath + "-wal").Length
            : await database
                .Database.SqlQueryRaw<long>("SELECT pg_database_size(current_database()) AS \"Value\"")
                .SingleAsync(Cancel);
}
