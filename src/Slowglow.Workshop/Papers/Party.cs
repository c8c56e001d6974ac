namespace Slowglow.Workshop.Papers;

/// <summary>Who a paper is from, or to, as it stood on the day.</summary>
/// <param name="TaxNumber">Empty when there is none.</param>
/// <param name="Logo">Name of the picture that is kept with the photographs; empty when there is none.</param>
public sealed record Party(string Name, string Address, string Contact, string TaxNumber, string Logo = "");
