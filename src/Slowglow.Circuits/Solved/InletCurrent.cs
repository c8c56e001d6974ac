namespace Slowglow.Circuits.Solved;

/// <summary>A healthy unit's current from the outlet.</summary>
/// <param name="Amps">Rms.</param>
/// <param name="Share">Its change with each random parameter, as a share of it.</param>
internal sealed record InletCurrent(double Amps, double[] Share);
