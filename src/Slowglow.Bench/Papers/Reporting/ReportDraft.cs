using Slowglow.Workshop.Papers;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>A report to begin with; the technician looks it over.</summary>
/// <param name="Basis">A sentence: what it was taken from, and how sure that is.</param>
public sealed record ReportDraft(RepairReport Report, string Basis);
