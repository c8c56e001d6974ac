namespace Slowglow.Workshop.Papers;

/// <param name="Found">What was wrong.</param>
/// <param name="Why">Why it sounded like that.</param>
/// <param name="Done">What was done about it.</param>
/// <param name="Advice">What the owner ought to know or do; may be empty.</param>
/// <param name="Readings">Readings before and after.</param>
/// <param name="WarrantyMonths">Warranty on the work, from the handover; 0 = none.</param>
/// <param name="Photos">Files of the job's photographs that are printed with it; null = none.</param>
public sealed record RepairReport(
    string Found,
    string Why,
    string Done,
    string Advice,
    IReadOnlyList<BeforeAfter> Readings,
    int WarrantyMonths,
    IReadOnlyList<string>? Photos = null
);
