namespace Slowglow.Circuits;

/// <summary>Largest signal that an op-amp can follow at a frequency: its steepest volts per second are the slew rate.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Element">"U1 section 2".</param>
/// <param name="Hertz">The frequency.</param>
/// <param name="GeneratorVolts">Generator level there, volts rms.</param>
/// <param name="OutputVolts">Output of the channel there, volts rms.</param>
public sealed record SlewLimit(string Part, string Element, double Hertz, double GeneratorVolts, double OutputVolts);
