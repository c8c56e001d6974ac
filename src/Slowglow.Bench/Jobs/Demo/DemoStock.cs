using Slowglow.Storage;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>A few bins, so that the stock page shows what it is for.</summary>
internal static class DemoStock
{
    public static async Task FillAsync(ShopDatabase database, DateTimeOffset now, CancellationToken cancel)
    {
        var table = await DemoTable.ReadAsync("stock.csv", cancel);
        foreach (var row in table.Rows)
        {
            var item = new StockItem
            {
                Part = table.Text(row, "part"),
                Bin = table.Text(row, "bin"),
                Equivalents = table.Text(row, "equivalents"),
                Least = table.Whole(row, "least"),
            };
            item.Move(table.Whole(row, "pieces"), table.Figure(row, "cost"), now, null, null, "to begin with");
            item.Describe();
            database.Stock.Add(item);
        }
    }
}
