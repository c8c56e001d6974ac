namespace Slowglow.Circuits;

/// <summary>A rectified rail under load.</summary>
/// <param name="Net">Its net.</param>
/// <param name="Volts">Mean volts against chassis.</param>
/// <param name="Amps">Mean current out of the rail, amperes; negative into it.</param>
public sealed record RailLoad(string Net, double Volts, double Amps);
