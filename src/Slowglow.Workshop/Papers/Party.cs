namespace Slowglow.Workshop.Papers;

/// <summary>Who a paper is from, or to, as it stood on the day.</summary>
/// <param name="TaxNumber">Empty when there is none.</param>
public sealed record Party(string Name, string Address, string Contact, string TaxNumber);
