using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>A diagnosis and what it was based on.</summary>
/// <param name="Result">Null when a document or line is wrong.</param>
/// <param name="Setups">Setups the document names, the default first.</param>
/// <param name="Findings">Of the readings document.</param>
/// <param name="LineFindings">Of the setup and the single lines; the line is quoted in the text.</param>
public sealed record DiagnosedUnit(
    DiagnosisResult? Result,
    IReadOnlyList<Setup> Setups,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<Finding> LineFindings
)
{
    /// <summary>Of the history.</summary>
    public IReadOnlyList<Finding> HistoryFindings { get; init; } = [];
}
