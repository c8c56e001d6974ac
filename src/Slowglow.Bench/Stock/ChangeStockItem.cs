using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Puts right what a bin holds, is called, or ought to hold. How many pieces there are is a matter of moves alone.</summary>
public sealed class ChangeStockItem(StockWriter writer)
{
    public Task<Parsed<StockItem>> RunAsync(
        int item,
        string part,
        string bin,
        string equivalents,
        int least,
        CancellationToken cancel = default
    ) =>
        writer.WriteAsync(
            item,
            (known, _) =>
            {
                List<Objection> wrong = known is null
                    ? [new("There is no such bin any more.", "One of those listed.")]
                    : [.. StockRules.LookItem(part, bin, equivalents, least)];
                if (wrong.Count == 0)
                {
                    (known!.Part, known.Bin, known.Equivalents, known.Least) = (
                        part.Trim(),
                        bin.Trim(),
                        equivalents.Trim(),
                        least
                    );
                }

                return (known, wrong);
            },
            cancel
        );
}
