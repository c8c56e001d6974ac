namespace Slowglow.Sheets;

/// <summary>Something the drawing does not say and the program had to assume.</summary>
/// <param name="Subject">Designator (or "mains").</param>
/// <param name="What">What was assumed, e.g. "tolerance", "resistance of winding HT".</param>
/// <param name="Figure">The figure with its unit, e.g. "5 %", "310 ohm".</param>
/// <param name="Reason">Where the figure comes from.</param>
public sealed record Assumption(string Subject, string What, string Figure, string Reason);
