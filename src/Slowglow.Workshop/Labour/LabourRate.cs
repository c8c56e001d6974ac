namespace Slowglow.Workshop.Labour;

/// <summary>What an hour costs.</summary>
/// <param name="Name">"bench", "diagnosis".</param>
/// <param name="PerHour">In the shop's currency, with or without tax as all its prices.</param>
public sealed record LabourRate(string Name, decimal PerHour);
