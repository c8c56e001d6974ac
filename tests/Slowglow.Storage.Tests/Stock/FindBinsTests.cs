using Slowglow.Bench.Stock;
using Slowglow.Power.Stress;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Storage.Tests.Counter;

namespace Slowglow.Storage.Tests.Stock;

public sealed class FindBinsTests
{
    /// <summary>22 nF that stands 412 V wants a film capacitor of 630 V, the next size sold.</summary>
    [Fact]
    public async Task Only_bins_of_the_value_and_of_enough_volts_do_and_empty_ones_do_not()
    {
        var cancel = TestContext.Current.CancellationToken;
        await using var under = await SqliteUnderTest.StartAsync();
        var add = new AddStockItem(new StockWriter(under.Shop, TimeProvider.System));
        foreach (
            var (part, pieces) in new[]
            {
                ("22 nF 630 V film", 3),
                ("22 nF 1 kV film", 2),
                ("22 nF 400 V film", 9),
                ("22 nF film", 9),
                ("47 nF 630 V film", 9),
                ("22 nF 630 V styrene", 0),
                ("22 kohm 1 W", 5),
            }
        )
        {
            Assert.Empty((await add.RunAsync(part, "A", "", 0, pieces, 1, cancel: cancel)).Findings);
        }

        var c1 = new CapacitorPart
        {
            Designator = "C1",
            Description = "22n",
            Pins = [],
            Farads = 22e-9,
            Tolerance = 0.1,
            Style = CapacitorStyle.Film,
        };
        var row = new StressRow("C1", "22n", "volts", "V", 412, "running", double.NaN, NeededRating.Volts(c1, 412));
        var find = new FindBins(under.Shop);

        var found = await find.RunAsync(c1, new([row], [], []), cancel);

        Assert.Equal(630, row.Needed);
        Assert.Equal(["22 nF 1 kV film", "22 nF 630 V film"], found.Bins.Select(b => b.Part));
        Assert.Empty((await find.RunAsync(c1, new([], [], []), cancel)).Bins);
    }
}
