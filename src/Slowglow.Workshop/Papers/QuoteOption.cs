using Slowglow.Workshop.Pricing;

namespace Slowglow.Workshop.Papers;

/// <summary>One way of doing it, among which the customer chooses.</summary>
/// <param name="Name">"repair as it was", "with a rewound transformer", "give it back unrepaired".</param>
public sealed record QuoteOption(string Name, Priced Priced);
