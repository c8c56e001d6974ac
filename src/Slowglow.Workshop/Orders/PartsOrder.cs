using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Orders;

/// <summary>Parts ordered from one supplier, in the supplier's currency.</summary>
/// <param name="Rate">Units of the shop's currency for one of the order's; 1 for the shop's own.</param>
/// <param name="Freight">In the order's currency.</param>
/// <param name="Promised">Day the supplier named; null when none was.</param>
/// <param name="Blocks">True when the job stands still until it is here.</param>
public sealed record PartsOrder(
    string Supplier,
    string Currency,
    decimal Rate,
    decimal Freight,
    IReadOnlyList<OrderLine> Lines,
    DateOnly? Promised,
    string Tracking,
    bool Blocks
)
{
    internal const decimal MostPrice = 10_000_000;

    /// <summary>Goods and freight, in the order's currency.</summary>
    public Amount Total => new Amount(Lines.Sum(l => l.Quantity * l.UnitPrice) + Freight, Currency).Rounded();

    /// <summary>Goods and freight in the shop's currency: the lines of <see cref="Landed"/> add up to it.</summary>
    public Amount TotalIn(string shopCurrency) => new Amount(Total.Figure * Rate, shopCurrency).Rounded();

    /// <summary>Every line with its share of freight (by value) in the shop's currency; nothing is lost in rounding.</summary>
    public IReadOnlyList<OrderedLine> Landed(string shopCurrency)
    {
        var shares = Sharing.Share(TotalIn(shopCurrency).Figure, [.. Lines.Select(l => l.Quantity * l.UnitPrice)], shopCurrency);
        return [.. Lines.Zip(shares, (line, share) => new OrderedLine(line, share, share / line.Quantity))];
    }

    /// <summary>What keeps it from being an order; empty when nothing does.</summary>
    public IReadOnlyList<Objection> Look() => [.. Wrong()];

    private IEnumerable<Objection> Wrong()
    {
        if (string.IsNullOrWhiteSpace(Supplier))
        {
            yield return new("The order names no supplier.", "Who it was ordered from.");
        }

        if (!Currencies.IsCode(Currency))
        {
            yield return new($"\"{Currency}\" is no currency.", "Three capitals: EUR, GBP, USD.");
        }

        if (Rate is <= 0 or > 1_000_000)
        {
            yield return new(
                "The rate of exchange has to be above 0.",
                "Units of the shop's currency for one of the order's; 1 for its own."
            );
        }

        if (Freight is < 0 or > MostPrice)
        {
            yield return new("The freight is below 0, or beyond reason.", "0 or more, in the currency of the order.");
        }

        if (Lines.Count == 0)
        {
            yield return new("There is nothing on the order.", "What was ordered, and how many pieces.");
        }

        foreach (var objection in Lines.SelectMany(l => l.Look()))
        {
            yield return objection;
        }
    }
}
