namespace Slowglow.Circuits;

/// <summary>
/// Noise that the laws of physics leave at an output, with the generator connected and turned down. An estimate, and a floor: flicker noise
/// and what worn carbon resistors and valves add are not in it.
/// </summary>
/// <param name="FromHertz">Lower edge of the band.</param>
/// <param name="ToHertz">Upper edge.</param>
/// <param name="Volts">At the output over the band, volts rms.</param>
/// <param name="SignalToNoiseDecibels">Level at 1 kHz for the sheet's input over the noise; NaN without a level.</param>
/// <param name="Sources">Largest first.</param>
public sealed record NoiseFloor(
    double FromHertz,
    double ToHertz,
    double Volts,
    double SignalToNoiseDecibels,
    IReadOnlyList<NoiseSource> Sources
);
