namespace Slowglow.Sheets;

/// <summary>A switch on the unit; the first position is the default.</summary>
public sealed record Switch(string Name, IReadOnlyList<string> Positions, Place Place);
