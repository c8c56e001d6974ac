namespace Slowglow.Drawing;

/// <summary>What a test point should read, and what it did.</summary>
/// <param name="Net">Canonical net.</param>
/// <param name="Where">As the bench names the point: "V1.6", "HT1".</param>
/// <param name="Nominal">Volts dc expected; NaN when no figure can be given.</param>
/// <param name="Low">Lower edge of the band, volts.</param>
/// <param name="High">Upper edge of the band, volts.</param>
/// <param name="Measured">What the meter said, in words with its unit ("62 V"); null when not measured.</param>
/// <param name="Mark">How that stands to the band; null when not measured.</param>
public sealed record PointFigure(
    string Net,
    string Where,
    double Nominal,
    double Low,
    double High,
    string? Measured = null,
    ReadingMark? Mark = null
);
