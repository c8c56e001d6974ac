using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>A reading on the way to the cure.</summary>
/// <param name="Reading">Null when the meter never came to rest.</param>
/// <param name="Suspect">First suspect afterwards.</param>
/// <param name="Probability">Of it, 0 to 1.</param>
public sealed record RehearsalStep(Probe Probe, Setup Setup, Reading? Reading, string Suspect, double Probability);
