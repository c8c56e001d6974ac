using System.Globalization;

namespace Slowglow.Workshop.Stock;

/// <summary>What the rules say to the stock before it is stored.</summary>
public static class StockRules
{
    private const int LongestName = 200;
    private const int LongestNote = 1000;
    private const int MostPieces = 100_000;

    public static IReadOnlyList<Objection> LookItem(string part, string bin, string equivalents, int least) =>
        [
            .. Named(part, "The part", "22 nF 630 V film"),
            .. Named(bin, "The bin", "A3"),
            .. equivalents.Length > LongestNote
                ? [new Objection($"The equivalents are longer than {LongestNote} characters.", "One a line.")]
                : Array.Empty<Objection>(),
            .. least is < 0 or > MostPieces
                ? [new Objection($"{least} cannot be the least.", "0 when it need not be kept.")]
                : Array.Empty<Objection>(),
        ];

    /// <param name="pieces">That come in.</param>
    public static IReadOnlyList<Objection> LookDelivery(int pieces, decimal costEach) =>
        pieces is < 1 or > MostPieces ? [new($"{pieces} pieces cannot come in.", "1 to 100,000.")]
        : costEach is < 0 or > 1_000_000 ? [new("The cost of a piece cannot be that.", "0 or more, in the shop's currency.")]
        : [];

    public static IReadOnlyList<Objection> LookCount(int counted) =>
        counted is < 0 or > MostPieces ? [new($"{counted} pieces cannot be counted.", "What lies in the bin, 0 or more.")] : [];

    public static IReadOnlyList<Objection> LookTake(StockItem? item, int pieces) =>
        item is null ? [new("There is no such bin any more.", "One of those listed.")]
        : pieces < 1 ? [new($"{pieces} pieces cannot be taken.", "At least 1.")]
        : pieces > item.OnHand
            ?
            [
                new(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"Bin {item.Bin} holds {item.OnHand} of {item.Part}, not {pieces}."
                    ),
                    "Take what is there, or count the bin."
                ),
            ]
        : [];

    private static IEnumerable<Objection> Named(string text, string what, string example)
    {
        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestName)
        {
            yield return new($"{what} is missing, or longer than {LongestName} characters.", example);
        }
    }
}
