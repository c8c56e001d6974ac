namespace Slowglow.Bench.Jobs;

/// <summary>A job as one line of the job book.</summary>
public sealed record JobLine(
    int Number,
    string Unit,
    string Customer,
    string Complaint,
    string State,
    DateTimeOffset BookedIn,
    DateTimeOffset? Promised,
    int Readings
);
