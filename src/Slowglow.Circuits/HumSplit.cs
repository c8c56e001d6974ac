namespace Slowglow.Circuits;

/// <summary>Hum at the output without signal, by cause.</summary>
/// <param name="Volts">All of it, volts rms.</param>
/// <param name="MainVolts">Of that, at the mains frequency.</param>
/// <param name="TwiceVolts">Of that, at twice the mains frequency.</param>
/// <param name="Causes">
/// Largest first. They add with their phases, so one may cancel a part of another: a push-pull stage, a humbucking supply.
/// </param>
public sealed record HumSplit(double Volts, double MainVolts, double TwiceVolts, IReadOnlyList<HumCause> Causes);
