using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Papers;

/// <summary>What the timeline says of a paper; the paper itself is kept by its number.</summary>
/// <param name="Credits">Of a credit note: number of the invoice.</param>
public sealed record IssuedPaper(PaperKind Kind, int Number, Amount Total, int? Credits);
