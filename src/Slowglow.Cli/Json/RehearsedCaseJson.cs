using Slowglow.Bench.Rehearsals;

namespace Slowglow.Cli.Json;

/// <summary>One hidden unit.</summary>
/// <param name="Kind">single, double or outofcatalogue.</param>
/// <param name="Rank">Place of the suspect that holds a true part; null when none does.</param>
internal sealed record RehearsedCaseJson(
    string Hidden,
    string Kind,
    IReadOnlyList<string> Cures,
    string Complaint,
    int? Rank,
    string First,
    double Probability,
    int Group,
    double NoneOfThese,
    bool Certain,
    int Readings,
    double Minutes
)
{
    public static RehearsedCaseJson From(RehearsalCase c) =>
        new(
            c.Hidden.Words,
            c.Hidden.Kind.ToString().ToLowerInvariant(),
            c.Hidden.Cures,
            c.Complaint,
            c.Rank == int.MaxValue ? null : c.Rank,
            c.First,
            c.FirstProbability,
            c.FirstGroup,
            c.NoneOfThese,
            c.IsCertain,
            c.Steps.Count,
            c.Minutes
        );
}
