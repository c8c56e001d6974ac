using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>What a job.yaml says: the card that was filled in at the counter.</summary>
/// <param name="Number">Null = the next free one.</param>
public sealed record JobCard(
    int? Number,
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
    IReadOnlyList<string> Notes
);
