namespace Slowglow.Workshop.Papers;

/// <summary>How much of a line of an invoice is taken back.</summary>
/// <param name="Line">From 0.</param>
/// <param name="Amount">As the line is printed, with or without tax; of the line's own sign.</param>
public sealed record CreditedAmount(int Line, decimal Amount);
