namespace Slowglow.Circuits;

/// <summary>How a world handles a signal.</summary>
/// <param name="Settled">False when no figure could be had; the others are then NaN.</param>
/// <param name="LevelVolts">Small-signal output, volts rms at 1 kHz, scaled to the sheet's input level.</param>
/// <param name="DistortionAtDrive">
/// Distortion (0 to 1; harmonics over fundamental) with the generator at half the level that brings the healthy circuit to 5 %.
/// </param>
/// <param name="OutputAtDrive">Fundamental at the output at that drive, volts rms.</param>
/// <param name="HumVolts">Mains hum and ripple at the output without signal, volts rms.</param>
/// <param name="OffsetVolts">DC at the output.</param>
public readonly record struct SignalReport(
    bool Settled,
    double LevelVolts,
    double DistortionAtDrive,
    double OutputAtDrive,
    double HumVolts,
    double OffsetVolts
);
