namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>A fault that drives a fuse beyond its rating.</summary>
/// <param name="Cause">Index of the fault among the single faults.</param>
/// <param name="Fuse">Designator of the fuse.</param>
/// <param name="Ratio">Amperes rms through it over its rating, in the world of the fault.</param>
/// <param name="Chance">That the fuse is found blown, 0 to 1.</param>
internal sealed record BlownFuse(int Cause, string Fuse, double Ratio, double Chance);
