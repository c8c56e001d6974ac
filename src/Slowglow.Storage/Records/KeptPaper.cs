using Slowglow.Workshop.Papers;

namespace Slowglow.Storage.Records;

/// <summary>An invoice or a credit note, kept by its number. Never changed.</summary>
public sealed class KeptPaper
{
    public required PaperKind Kind { get; init; }

    /// <summary>Counts from 1 within its kind, without gaps.</summary>
    public required int Number { get; init; }
    public required int JobNumber { get; init; }

    /// <summary>Days since 0001-01-01, so that every database orders them alike.</summary>
    public required int Day { get; init; }
    public required Paper Paper { get; init; }
}
