namespace Slowglow.Bench.Questions;

/// <summary>All that a technician hands over for a diagnosis, as written.</summary>
public sealed record DiagnoseRequest
{
    /// <summary>A readings document; null when there is none.</summary>
    public string? ReadingsText { get; init; }

    /// <summary>Further reading lines, in the syntax of the document.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>Setup that <see cref="Lines"/> were taken in where they name none: a name or keys; null = the document's first.</summary>
    public string? Setup { get; init; }

    /// <summary>Added to the complaint of the document.</summary>
    public string? Complaint { get; init; }

    /// <summary>What past jobs on the sheet came down to, a line each; null when no history is to count.</summary>
    public string? HistoryText { get; init; }

    /// <summary>Age of the unit, years; NaN when nobody knows.</summary>
    public double AgeYears { get; init; } = double.NaN;
}
