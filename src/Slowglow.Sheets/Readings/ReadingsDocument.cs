using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>A readings document: complaint, setups (first = default) and readings.</summary>
public sealed record ReadingsDocument(string? Complaint, IReadOnlyList<Setup> Setups, IReadOnlyList<Reading> Readings);
