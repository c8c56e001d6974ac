using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Keeping;

/// <summary>An item of the stock as it stands in the export.</summary>
internal sealed record ExportedBin(
    int Id,
    string Part,
    string Bin,
    string Equivalents,
    int Least,
    int OnHand,
    decimal CostEach,
    IReadOnlyList<StockMove> Moves
)
{
    public static ExportedBin Of(StockItem item) =>
        new(
            item.Id,
            item.Part,
            item.Bin,
            item.Equivalents,
            item.Least,
            item.OnHand,
            item.CostEach,
            [.. item.Moves.OrderBy(m => m.Sequence)]
        );
}
