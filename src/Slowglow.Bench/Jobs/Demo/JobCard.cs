using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>What a job.yaml says: the card that was filled in at the counter.</summary>
/// <param name="Condition">How it came over the counter: dents, missing knobs, smells.</param>
public sealed record JobCard(
    string Customer,
    string Contact,
    string? Maker,
    string? Model,
    string Serial,
    DateTimeOffset? BookedIn,
    DateTimeOffset? Promised,
    Amount? Limit,
    JobState State,
    string? Complaint,
    IReadOnlyList<string> Condition
);
