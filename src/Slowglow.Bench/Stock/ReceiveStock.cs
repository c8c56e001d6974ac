using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Puts pieces that were bought into their bin.</summary>
public sealed class ReceiveStock(StockWriter writer)
{
    /// <param name="costEach">What a piece cost with freight, in the shop's currency.</param>
    public Task<Parsed<StockItem>> RunAsync(
        int item,
        int pieces,
        decimal costEach,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        writer.WriteAsync(
            item,
            (known, now) =>
            {
                var wrong = known is null
                    ? [new Objection("There is no such bin any more.", "One of those listed.")]
                    : StockRules.LookDelivery(pieces, costEach);
                if (wrong.Count == 0)
                {
                    known!.Move(pieces, costEach, now, null, by ?? Someone.Name, "came in");
                }

                return (known, wrong);
            },
            cancel
        );
}
