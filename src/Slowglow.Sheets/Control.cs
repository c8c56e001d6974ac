namespace Slowglow.Sheets;

/// <summary>A control on the unit. <paramref name="Rotation"/> is the fraction (0 to 1) that expectations are worked at.</summary>
public sealed record Control(string Name, double Rotation, Place Place);
