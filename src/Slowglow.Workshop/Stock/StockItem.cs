using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.Stock;

/// <summary>A kind of part in a bin of the shop. How many there are follows from its moves alone.</summary>
public sealed class StockItem
{
    private readonly List<StockMove> moves = [];

    public int Id { get; init; }

    /// <summary>What it is: "22 nF 630 V film".</summary>
    public required string Part { get; set; }

    public required string Bin { get; set; }

    /// <summary>What does instead of it, as the technician knows it: one a line; may be empty.</summary>
    public string Equivalents { get; set; } = "";

    /// <summary>Fewer than this want ordering; 0 = never asked for.</summary>
    public int Least { get; set; }

    /// <summary>Pieces in the bin, at least 0.</summary>
    public int OnHand { get; private set; }

    /// <summary>What a piece cost on average, in the shop's currency: moves with each delivery by its weight.</summary>
    public decimal CostEach { get; private set; }

    /// <summary>How many moves there were. Two benches that move it at once cannot both be stored.</summary>
    public int MoveCount { get; private set; }

    /// <summary>All that the search looks through, folded.</summary>
    public string Words { get; private set; } = "";

    public IReadOnlyList<StockMove> Moves => moves;

    public bool IsShort => OnHand < Least;

    public void Describe() => Words = BoardCard.Fold($"{Part} {Bin} {Equivalents.ReplaceLineEndings(" ")}");

    /// <summary>Puts pieces in (above 0) or takes them out (below 0).</summary>
    /// <param name="costEach">What a piece cost that came in; null for the cost known.</param>
    public void Move(int pieces, decimal? costEach, DateTimeOffset at, int? job, string? by, string why)
    {
        if (pieces > 0 && costEach is { } cost)
        {
            CostEach = decimal.Round(
                ((OnHand * CostEach) + (pieces * cost)) / (OnHand + pieces),
                4,
                MidpointRounding.AwayFromZero
            );
        }

        OnHand += pieces;
        MoveCount++;
        moves.Add(
            new()
            {
                Sequence = MoveCount,
                Pieces = pieces,
                Left = OnHand,
                At = at,
                JobNumber = job,
                By = by,
                Why = why,
            }
        );
    }
}
