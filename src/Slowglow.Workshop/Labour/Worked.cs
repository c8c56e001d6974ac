namespace Slowglow.Workshop.Labour;

/// <param name="Rate">Name of a labour rate.</param>
/// <param name="Minutes">As worked, not rounded; above 0.</param>
/// <param name="Timer">Sequence of the timer that it stops; null when typed.</param>
public sealed record Worked(string Rate, int Minutes, string What, int? Timer);
