namespace Slowglow.Circuits;

/// <summary>Level at one frequency.</summary>
/// <param name="Hertz">Frequency.</param>
/// <param name="Volts">At the output for the sheet's input level, volts rms.</param>
/// <param name="Decibels">Against the level at the reference frequency.</param>
/// <param name="PhaseDegrees">Output against generator, -180 to 180.</param>
/// <param name="SigmaDecibels">One standard deviation of <see cref="Decibels"/> over tolerances.</param>
public readonly record struct ResponsePoint(
    double Hertz,
    double Volts,
    double Decibels,
    double PhaseDegrees,
    double SigmaDecibels
);
