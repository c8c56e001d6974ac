using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Puts right how many pieces lie in a bin, after counting them. The difference is a move of its own.</summary>
public sealed class CountStock(StockWriter writer)
{
    public Task<Parsed<StockItem>> RunAsync(int item, int counted, string? by = null, CancellationToken cancel = default) =>
        writer.WriteAsync(
            item,
            (known, now) =>
            {
                var wrong = known is null
                    ? [new Objection("There is no such bin any more.", "One of those listed.")]
                    : StockRules.LookCount(counted);
                if (wrong.Count == 0)
                {
                    known!.Move(counted - known.OnHand, null, now, null, by ?? Someone.Name, "counted");
                }

                return (known, wrong);
            },
            cancel
        );
}
