using System.Globalization;

namespace Slowglow.Workshop.Orders;

/// <summary>A part on an order.</summary>
/// <param name="Part">What it is, and for where: "47 uF 450 V axial, C1".</param>
/// <param name="Quantity">Pieces, above 0.</param>
/// <param name="UnitPrice">A piece, in the order's currency, at least 0.</param>
public sealed record OrderLine(string Part, int Quantity, decimal UnitPrice)
{
    private const int LongestName = 200;
    private const int MostPieces = 10_000;

    /// <summary>What keeps it from being ordered; empty when nothing does.</summary>
    public IReadOnlyList<Objection> Look() => [.. Wrong()];

    private IEnumerable<Objection> Wrong()
    {
        if (string.IsNullOrWhiteSpace(Part) || Part.Length > LongestName)
        {
            yield return new($"A line names no part, or in more than {LongestName} characters.", "47 uF 450 V axial, C1");
        }

        if (Quantity is < 1 or > MostPieces)
        {
            yield return new($"{Quantity} pieces cannot be ordered.", "1 to 10,000.");
        }

        if (UnitPrice is < 0 or > PartsOrder.MostPrice)
        {
            yield return new(
                $"A piece cannot cost {UnitPrice.ToString("0.##", CultureInfo.InvariantCulture)}.",
                "0 or more, in the currency of the order."
            );
        }
    }
}
