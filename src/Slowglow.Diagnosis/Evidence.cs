using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis;

/// <summary>All that is known of the unit: the complaint in the customer's words, how the bench can stand, and what the meter said.</summary>
/// <param name="Setups">Setups that next readings may be proposed in; the first is the default.</param>
public sealed record Evidence(string? Complaint, IReadOnlyList<Setup> Setups, IReadOnlyList<Reading> Readings);
