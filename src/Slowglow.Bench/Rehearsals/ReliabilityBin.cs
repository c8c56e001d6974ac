namespace Slowglow.Bench.Rehearsals;

/// <summary>Statements of about the same certainty.</summary>
/// <param name="Low">From here, 0 to 1.</param>
/// <param name="High">To below here; the last bin holds 1 too.</param>
/// <param name="Statements">How many.</param>
/// <param name="Claimed">Mean probability claimed; NaN when there are none.</param>
/// <param name="Right">Share that was right; NaN when there are none.</param>
public sealed record ReliabilityBin(double Low, double High, int Statements, double Claimed, double Right);
