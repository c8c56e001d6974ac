namespace Slowglow.Bench.Papers;

/// <summary>An earlier job on the same unit or model.</summary>
/// <param name="Found">What was wrong, from its report or its notes; empty when nobody wrote it down.</param>
/// <param name="WarrantyUntil">Last day of the warranty on that work; null when there was none.</param>
public sealed record PastVisit(
    int Number,
    string Unit,
    string Customer,
    DateTimeOffset BookedIn,
    string Complaint,
    string Found,
    DateOnly? WarrantyUntil
);
