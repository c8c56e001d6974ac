namespace Slowglow.Sheets;

/// <summary>What the technician noted about a test point.</summary>
/// <param name="Where">Net or pin as written.</param>
/// <param name="AccessMinutes">Minutes to get a probe there; null = default.</param>
public sealed record PointRemark(string Where, double? AccessMinutes, string? Note);
