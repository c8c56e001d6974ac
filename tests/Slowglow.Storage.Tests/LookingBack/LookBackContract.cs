using Slowglow.Bench.LookingBack;
using Slowglow.Bench.Papers;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.LookingBack;

/// <summary>Looking back over a book, on every kind of database.</summary>
public abstract class LookBackContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Jobs_that_went_home_count_in_their_month_and_open_ones_do_not()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        await floor.BookAsync();
        var gone = await floor.BookAsync();
        await floor.DoAsync(gone, new HoursWorked { What = new("bench", 120, "", null) });
        await floor.DoAsync(gone, new PartFitted { What = new("choke", 1, 20, 45, "") });
        var issued = await new IssueInvoice(floor.Ledger).RunAsync(gone, [ShopFloor.Line(220)], cancel: Cancel);
        Assert.Empty(issued.Findings);
        await floor.DoAsync(gone, new MarkedReady { What = new("works, tested by ear", "") });
        await floor.DoAsync(gone, new HandedOver { What = new("Ada", "", null) });

        var back = await new ReadLookBack(under.Shop, TimeProvider.System).RunAsync(3, Cancel);

        Assert.Equal((1, 3), (back.Jobs, back.Months.Count));
        Assert.Equal((200m, 2m, 100m), (back.Months[^1].Earned, back.Months[^1].Hours, back.Months[^1].PerHour));
        Assert.Equal(1, back.WithoutPromise);
    }
}
