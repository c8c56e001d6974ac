using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>A probe, a setup, and what the meter said.</summary>
/// <param name="Value">Base units (V, A, ohm); NaN on overload.</param>
/// <param name="Text">The line as the technician wrote it.</param>
public sealed record Reading(Probe Probe, Setup Setup, MeterSaid Said, double Value, MeterClass Meter, string Text, Place Place);
