using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>What a sheet amounts to.</summary>
/// <param name="Unit">What is printed on the front; null when the sheet cannot be read.</param>
/// <param name="Faults">Single faults that the models can compute; soft ones count once for each severity.</param>
/// <param name="Findings">Errors, warnings and notes, of sheet and circuit.</param>
public sealed record SheetCheck(
    string? Unit,
    string? Maker,
    int Parts,
    int Nets,
    IReadOnlyList<string> Channels,
    int Faults,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>True when nothing stops the sheet from being used.</summary>
    public bool Usable => Unit is not null && Findings.All(f => f.Severity != Severity.Error);
}
