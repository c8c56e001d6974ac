namespace Slowglow.Workshop.Pricing;

/// <summary>A rate from a day on.</summary>
/// <param name="Name">What lines call it: "standard".</param>
/// <param name="Percent">0 to 100.</param>
/// <param name="From">First day it holds; it ends when a later rate of the same name begins.</param>
public sealed record TaxRate(string Name, decimal Percent, DateOnly From);
