using Slowglow.Workshop.Papers;

namespace Slowglow.Workshop.Jobs;

/// <summary>A quote with its answer.</summary>
/// <param name="Answer">The last one; null until there is one.</param>
public sealed record GivenQuote(int Sequence, Quote Quote, QuoteAnswer? Answer);
