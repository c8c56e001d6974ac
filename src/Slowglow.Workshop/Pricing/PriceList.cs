using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Pricing;

/// <summary>Works out lines, tax and totals.</summary>
public static class PriceList
{
    /// <summary>Lines are rounded as printed; tax per line or per rate, by the rule. Every rate named must be in the table on that day.</summary>
    public static Priced Work(IReadOnlyList<ChargeLine> lines, PricingRule rule, TaxTable table, DateOnly day)
    {
        var priced = lines.Select(l => Price(l, rule, Percent(l, table, day))).ToList();
        var shares = priced.GroupBy(l => (l.Line.Tax, l.Percent)).Select(g => Share(g.Key.Tax, g.Key.Percent, [.. g], rule));
        return new(rule, day, priced, [.. shares]);
    }

    /// <summary>Tax in an amount that includes it, or on one that does not; not rounded.</summary>
    public static decimal TaxOf(decimal amount, decimal percent, bool included) =>
        included ? amount * percent / (100 + percent) : amount * percent / 100;

    private static PricedLine Price(ChargeLine line, PricingRule rule, decimal percent)
    {
        var amount = Currencies.Round(line.Exact, rule.Currency);
        return new(line, amount, percent, Currencies.Round(TaxOf(amount, percent, rule.PricesIncludeTax), rule.Currency));
    }

    private static TaxShare Share(string name, decimal percent, IReadOnlyList<PricedLine> lines, PricingRule rule)
    {
        var amount = lines.Sum(l => l.Amount);
        var tax =
            rule.Rounding == TaxRounding.PerLine
                ? lines.Sum(l => l.Tax)
                : Currencies.Round(TaxOf(amount, percent, rule.PricesIncludeTax), rule.Currency);
        return new(name, percent, rule.PricesIncludeTax ? amount - tax : amount, tax);
    }

    private static decimal Percent(ChargeLine line, TaxTable table, DateOnly day) =>
        table.On(line.Tax, day)?.Percent
        ?? throw new InvalidOperationException($"No tax rate \"{line.Tax}\" on {day:O}: check the lines first.");
}
