using Slowglow.Circuits;

namespace Slowglow.Diagnosis;

/// <summary>A part that was the cause of past jobs on the same sheet.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Mode">How it had failed; null when nobody wrote that down.</param>
/// <param name="Jobs">How many jobs, at least 1.</param>
public sealed record FoundBefore(string Part, FailureMode? Mode, int Jobs);
