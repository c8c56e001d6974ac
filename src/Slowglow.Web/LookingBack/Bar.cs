namespace Slowglow.Web.LookingBack;

/// <summary>A bar of a chart.</summary>
/// <param name="Figure">Its value as printed, with its unit; "none" where there is none.</param>
/// <param name="Second">Of the second of two sorts that stand side by side.</param>
public sealed record Bar(string Name, double Value, string Figure, bool Second = false);
