namespace Slowglow.Workshop.Pricing;

/// <summary>What is put on parts up to a cost.</summary>
/// <param name="UpTo">Cost of a piece in the shop's currency, inclusive; null for everything above the other steps.</param>
/// <param name="Percent">At least 0.</param>
public sealed record MarkupStep(decimal? UpTo, decimal Percent);
