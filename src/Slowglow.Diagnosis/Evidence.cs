using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis;

/// <summary>All that is known of the unit: the complaint in the customer's words, how the bench can stand, and what the meter said.</summary>
/// <param name="Setups">Setups that next readings may be proposed in; the first is the default.</param>
public sealed record Evidence(string? Complaint, IReadOnlyList<Setup> Setups, IReadOnlyList<Reading> Readings)
{
    /// <summary>What past jobs on the same sheet came down to; null when there were none, or when they are not to count.</summary>
    public PastJobs? Past { get; init; }

    /// <summary>Age of the unit, years, 0 or more; NaN when nobody knows.</summary>
    public double AgeYears { get; init; } = double.NaN;
}
