using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Stock;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Stock;

/// <summary>Bins and what jobs take out of them, on every kind of database.</summary>
public abstract class StockContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Pieces_are_taken_by_a_job_and_put_back_and_the_cost_is_the_average()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var writer = new StockWriter(under.Shop, TimeProvider.System);
        var item = (await new AddStockItem(writer).RunAsync("EL84", "A3", "6BQ5\n7189 is not", 2, 3, 10, cancel: Cancel)).Value!;
        // 3 at 10 and 1 at 14 are 4 at 11.
        Assert.Equal(11m, (await new ReceiveStock(writer).RunAsync(item.Id, 1, 14, cancel: Cancel)).Value!.CostEach);

        Assert.Empty((await new TakeFromStock(floor.Ledger).RunAsync(job, item.Id, 3, "Bea", Cancel)).Findings);
        var fitted = Assert.Single((await floor.FileAsync(job)).Dealings.Fitted);
        Assert.Equal(("EL84", 3, 11m, "bin A3"), (fitted.Part, fitted.Quantity, fitted.CostEach, fitted.From));
        Assert.True((await Item(under)).IsShort);
        var refused = await new TakeFromStock(floor.Ledger).RunAsync(job, item.Id, 2, cancel: Cancel);
        Assert.Equal("Bin A3 holds 1 of EL84, not 2.", Assert.Single(refused.Findings).Text);

        await floor.DoAsync(job, new EntryStruck { What = new(2, "the old ones test good") });
        Assert.Empty((await floor.FileAsync(job)).Dealings.Fitted);
        Assert.Equal((4, 11m), ((await Item(under)).OnHand, (await Item(under)).CostEach));
        Assert.Equal(2, (await new CountStock(writer).RunAsync(item.Id, 2, cancel: Cancel)).Value!.OnHand);
        await using var database = under.Shop.CreateDbContext();
        var moves = await database.Set<StockMove>().OrderBy(m => m.Sequence).ToListAsync(Cancel);
        Assert.Equal([3, 1, -3, 3, -2], moves.Select(m => m.Pieces));
        Assert.Equal([3, 4, 1, 4, 2], moves.Select(m => m.Left));
        Assert.Equal([null, null, job, job, null], moves.Select(m => m.JobNumber));
    }

    [Fact]
    public async Task Last_piece_goes_to_one_of_two_benches_that_reach_for_it_at_once()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var writer = new StockWriter(under.Shop, TimeProvider.System);
        var item = (await new AddStockItem(writer).RunAsync("T1", "shelf", "", 0, 2, 40, cancel: Cancel)).Value!;
        List<int> jobs = [];
        for (var i = 0; i < 6; i++)
        {
            jobs.Add(await floor.BookAsync());
        }

        var taken = await Task.WhenAll(
            jobs.Select(j => new TakeFromStock(new ShopFloor(under.Shop).Ledger).RunAsync(j, item.Id, 1, cancel: Cancel))
        );

        Assert.Equal(2, taken.Count(t => t.Findings.Count == 0));
        Assert.All(
            taken.Where(t => t.Value is null),
            t => Assert.Contains("holds 0 of T1", t.Findings[0].Text, StringComparison.Ordinal)
        );
        Assert.Equal(0, (await Item(under)).OnHand);
    }

    [Fact]
    public async Task Delivery_to_a_job_goes_through_the_bin_of_what_is_stocked_and_the_fitting_takes_it_out_again()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var writer = new StockWriter(under.Shop, TimeProvider.System);
        var item = (await new AddStockItem(writer).RunAsync("47 uF 450 V axial", "C1", "", 0, 2, 3, cancel: Cancel)).Value!;
        await floor.DoAsync(
            job,
            new PartsOrdered
            {
                What = new(
                    "Invented Iron",
                    "EUR",
                    1,
                    6,
                    [new("47uF 450V axial, C1", 4, 6), new("choke 5 H", 1, 24)],
                    null,
                    "",
                    true
                ),
            }
        );
        var (receive, fit) = (new ReceiveParts(floor.Ledger), new FitPart(floor.Ledger));

        // Freight by value: 3 of 6 for the four capacitors, so 6.75 each. 2 at 3 and 3 at 6.75 are 5 at 5.25.
        Assert.Empty((await receive.RunAsync(job, 2, [3, 1], "Bea", Cancel)).Findings);
        Assert.Equal((5, 5.25m), ((await Item(under)).OnHand, (await Item(under)).CostEach));

        Assert.Empty(
            (await fit.RunAsync(job, new("47 uF 450 V axial, C1", 1, 6.75m, 10, "Invented Iron"), "Bea", Cancel)).Findings
        );
        Assert.Empty((await fit.RunAsync(job, new("choke 5 H", 1, 27, 40, "Invented Iron"), "Bea", Cancel)).Findings);
        Assert.Equal(4, (await Item(under)).OnHand);
        // More than came is not out of this delivery: the technician had it from elsewhere.
        Assert.Empty((await fit.RunAsync(job, new("47 uF 450 V axial", 3, 1, 2, "the drawer"), "Bea", Cancel)).Findings);
        var fitted = (await floor.FileAsync(job)).Dealings.Fitted;
        Assert.Equal([item.Id, null, null], fitted.Select(f => f.Stock));
        Assert.Equal(4, (await Item(under)).OnHand);

        // It never came: 4 in the bin, 3 go back out. Once more is gone than is left, it cannot be struck out.
        await floor.DoAsync(job, new EntryStruck { What = new(3, "it was another order") });
        Assert.Equal(1, (await Item(under)).OnHand);
        await using var database = under.Shop.CreateDbContext();
        var moves = await database.Set<StockMove>().OrderBy(m => m.Sequence).ToListAsync(Cancel);
        Assert.Equal([2, 3, -1, -3], moves.Select(m => m.Pieces));
        Assert.Equal([null, "Bea", "Bea", null], moves.Select(m => m.By));
    }

    [Fact]
    public async Task Delivery_whose_pieces_are_gone_from_the_bin_cannot_be_struck_out()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var writer = new StockWriter(under.Shop, TimeProvider.System);
        var item = (await new AddStockItem(writer).RunAsync("EL84", "A3", "", 0, 0, 0, cancel: Cancel)).Value!;
        await floor.DoAsync(
            job,
            new PartsOrdered { What = new("Invented Iron", "EUR", 1, 0, [new("EL84", 2, 9)], null, "", true) }
        );
        Assert.Empty((await new ReceiveParts(floor.Ledger).RunAsync(job, 2, [2], cancel: Cancel)).Findings);
        Assert.Empty((await new CountStock(writer).RunAsync(item.Id, 1, cancel: Cancel)).Findings);

        var refused = await floor.EnterAsync(job, new EntryStruck { What = new(3, "never came") });

        Assert.Equal("Bin A3 holds 1 of EL84, not 2.", Assert.Single(refused.Findings).Text);
        Assert.Equal(1, (await Item(under)).OnHand);
    }

    [Theory]
    [InlineData("", "A3", 0, 1, "The part is missing")]
    [InlineData("EL84", " ", 0, 1, "The bin is missing")]
    [InlineData("EL84", "A3", -1, 1, "cannot be the least")]
    [InlineData("EL84", "A3", 0, -1, "cannot come in")]
    public async Task What_cannot_lie_in_a_bin_is_told(string part, string bin, int least, int pieces, string said)
    {
        await using var under = await StartAsync();

        var added = await new AddStockItem(new(under.Shop, TimeProvider.System)).RunAsync(
            part,
            bin,
            "",
            least,
            pieces,
            1,
            cancel: Cancel
        );

        Assert.Contains(said, Assert.Single(added.Findings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bins_are_found_by_part_bin_and_equivalent_and_go_into_the_export()
    {
        await using var under = await StartAsync();
        var add = new AddStockItem(new(under.Shop, TimeProvider.System));
        await add.RunAsync("EL84", "A3", "6BQ5", 0, 4, 9, cancel: Cancel);
        await add.RunAsync("22 nF 630 V film", "B1", "", 0, 10, 0.4m, cancel: Cancel);

        Assert.Equal("EL84", Assert.Single(await new ReadStock(under.Shop).RunAsync("6bq5", Cancel)).Part);
        Assert.Equal("B1", Assert.Single(await new ReadStock(under.Shop).RunAsync("film 22", Cancel)).Bin);
        Assert.Equal(2, (await new ReadStock(under.Shop).RunAsync("", Cancel)).Count);
        var folder = Directory.CreateTempSubdirectory("slowglow-export-").FullName;
        var files = (await new ExportShop(under.Shop, TimeProvider.System).RunAsync(folder, Cancel)).Value!;
        using var json = System.Text.Json.JsonDocument.Parse(await File.ReadAllTextAsync(files[0], Cancel));
        var bin = json.RootElement.GetProperty("stock")[0];
        Assert.Equal((4, 9m), (bin.GetProperty("OnHand").GetInt32(), bin.GetProperty("CostEach").GetDecimal()));
        Assert.Equal(1, bin.GetProperty("Moves").GetArrayLength());
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Board_says_what_a_job_is_blocked_by_until_the_last_piece_is_here()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await floor.DoAsync(job, new PartNeeded { What = new("EL84", 2, "V3 gassy") });
        Assert.Equal("2 x EL84: not ordered yet", (await Card(under)).Blocked);
        var day = floor.Today.AddDays(3);
        await floor.DoAsync(
            job,
            new PartsOrdered { What = new("Iron", "EUR", 1, 0, [new("el-84", 2, 9), new("T1", 1, 80)], day, "", true) }
        );
        await floor.DoAsync(job, new PartsArrived { What = new(3, [1, 1]) });

        Assert.StartsWith("1 x el-84 from Iron, promised ", (await Card(under)).Blocked, StringComparison.Ordinal);
        Assert.Equal(day, DateOnly.FromDateTime((await Card(under)).PartsDue!.Value.UtcDateTime));
        Assert.Equal("on its way", Assert.Single((await floor.FileAsync(job)).Dealings.NeededParts).Words);
        await floor.DoAsync(job, new PartsArrived { What = new(3, [1, 0]) });
        Assert.Equal(("", null), ((await Card(under)).Blocked, (await Card(under)).PartsDue));
        Assert.Equal("here", Assert.Single((await floor.FileAsync(job)).Dealings.NeededParts).Words);
    }

    private static async Task<StockItem> Item(IShopUnderTest under) => (await new ReadStock(under.Shop).RunAsync("", Cancel))[0];

    private static async Task<Workshop.Jobs.BoardCard> Card(IShopUnderTest under) =>
        Assert.Single(await new ReadBoard(under.Reopened()).RunAsync(Cancel));
}
