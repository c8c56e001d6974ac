using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis;

/// <summary>A reading beside what a healthy unit would show.</summary>
/// <param name="Deviations">Distance in standard deviations (spread and meter); NaN when there is no figure.</param>
/// <param name="Word">"as expected", "low", "far too low", "high", "far too high", "cannot be said".</param>
public sealed record ReadingVerdict(Reading Reading, double Nominal, double Low, double High, double Deviations, string Word);
