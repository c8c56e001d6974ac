namespace Slowglow.Workshop.Pricing;

/// <summary>Lines with tax and totals. Every total is the sum of what stands above it.</summary>
/// <param name="Day">Day whose rates were taken.</param>
/// <param name="Taxes">One entry a rate, in the order of the lines.</param>
public sealed record Priced(PricingRule Rule, DateOnly Day, IReadOnlyList<PricedLine> Lines, IReadOnlyList<TaxShare> Taxes)
{
    public decimal Net => Taxes.Sum(t => t.Net);
    public decimal Tax => Taxes.Sum(t => t.Tax);
    public decimal Gross => Net + Tax;

    /// <summary>What the customer pays.</summary>
    public Money.Amount Total => new(Gross, Rule.Currency);

    /// <summary>The longest wait among the lines, in weeks; null when nothing has to be waited for.</summary>
    public int? Weeks => Lines.Max(l => l.Line.Weeks);
}
