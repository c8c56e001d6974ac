using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Pricing;

/// <summary>How the price of a part follows from its cost: cheap parts carry more, because handling costs the same.</summary>
/// <param name="Steps">Rising; a cost above all of them carries no mark-up.</param>
/// <param name="Least">Least put on a piece, in the shop's currency.</param>
/// <param name="RoundUpTo">Prices end on multiples of this (0.05); 0 = the smallest coin.</param>
public sealed record MarkupRule(IReadOnlyList<MarkupStep> Steps, decimal Least, decimal RoundUpTo)
{
    /// <summary>Price of a piece that cost that much, without tax.</summary>
    public decimal Price(decimal cost, string currency)
    {
        var percent = Steps.FirstOrDefault(s => s.UpTo is null || cost <= s.UpTo)?.Percent ?? 0;
        var price = cost + Math.Max(cost * percent / 100, Least);
        return RoundUpTo > 0 ? Math.Ceiling(price / RoundUpTo) * RoundUpTo : Currencies.Round(price, currency);
    }
}
