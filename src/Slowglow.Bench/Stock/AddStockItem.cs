using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Puts a kind of part into a bin for the first time.</summary>
public sealed class AddStockItem(StockWriter writer)
{
    /// <param name="pieces">In the bin to begin with; 0 or more.</param>
    public Task<Parsed<StockItem>> RunAsync(
        string part,
        string bin,
        string equivalents,
        int least,
        int pieces,
        decimal costEach,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        writer.WriteAsync(
            null,
            (_, now) =>
            {
                List<Objection> wrong = [.. StockRules.LookItem(part, bin, equivalents, least)];
                wrong.AddRange(pieces == 0 ? [] : StockRules.LookDelivery(pieces, costEach));
                if (wrong.Count > 0)
                {
                    return (null, wrong);
                }

                var item = new StockItem
                {
                    Part = part.Trim(),
                    Bin = bin.Trim(),
                    Equivalents = equivalents.Trim(),
                    Least = least,
                };
                if (pieces > 0)
                {
                    item.Move(pieces, costEach, now, null, by ?? Someone.Name, "to begin with");
                }

                return (item, []);
            },
            cancel
        );
}
