namespace Slowglow.Workshop.Pricing;

/// <summary>How lines become a total.</summary>
/// <param name="Currency">ISO 4217.</param>
/// <param name="PricesIncludeTax">True when unit prices are what the customer pays.</param>
public sealed record PricingRule(string Currency, bool PricesIncludeTax, TaxRounding Rounding);
