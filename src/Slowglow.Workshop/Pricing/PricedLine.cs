namespace Slowglow.Workshop.Pricing;

/// <summary>A line with what it comes to.</summary>
/// <param name="Amount">Quantity times price, rounded, as printed; with or without tax by the rule.</param>
/// <param name="Percent">Rate of its tax on the day.</param>
/// <param name="Tax">Tax in or on this line, rounded; adds up to the total only where tax is rounded per line.</param>
public sealed record PricedLine(ChargeLine Line, decimal Amount, decimal Percent, decimal Tax);
