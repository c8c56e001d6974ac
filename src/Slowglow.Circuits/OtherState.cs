namespace Slowglow.Circuits;

/// <summary>A second state in which a world can rest as well as in the one that its figures are given for.</summary>
/// <param name="Nets">Nets that differ, most first: volts in the state given, volts in the other.</param>
public sealed record OtherState(IReadOnlyList<(string Net, double Volts, double OtherVolts)> Nets);
