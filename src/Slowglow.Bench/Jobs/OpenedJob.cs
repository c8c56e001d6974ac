using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Drawing;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Jobs;

/// <summary>A job as it lies on the bench: rebuilt from its timeline.</summary>
/// <param name="Unit">Null when the sheet has errors; they are among the findings.</param>
/// <param name="Setups">The first is the default.</param>
/// <param name="Chosen">The setup the bench stands in.</param>
/// <param name="Findings">Of sheet, circuit, setups and readings.</param>
public sealed record OpenedJob(
    Job Job,
    JobStanding Standing,
    BenchUnit? Unit,
    IReadOnlyList<Setup> Setups,
    Setup Chosen,
    IReadOnlyList<StandingReading> Readings,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>All that is known, for a diagnosis.</summary>
    public Evidence Evidence =>
        new(Standing.Complaint, Setups, [.. Readings.Select(r => r.Reading)])
        {
            Past = Past,
            AgeYears = Unit?.Sheet.AgeIn(Job.BookedIn.Year) ?? double.NaN,
        };

    /// <summary>What past jobs on the same sheet came down to; null when there were none, or when they are not to count.</summary>
    public PastJobs? Past { get; init; }

    /// <summary>How the shop wants its drawings.</summary>
    public DrawingStyle Style { get; init; } = new();

    /// <summary>Setups with the chosen one first, so that a line without "on" is taken in it.</summary>
    public IReadOnlyList<Setup> ChosenFirst => [Chosen, .. Setups.Where(s => s != Chosen)];
}
