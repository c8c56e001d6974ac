namespace Slowglow.Workshop.Pricing;

/// <summary>What a paper charges under one rate.</summary>
public sealed record TaxShare(string Name, decimal Percent, decimal Net, decimal Tax)
{
    public decimal Gross => Net + Tax;
}
