namespace Slowglow.Bench.Writing;

/// <summary>One of the texts that a job's sheet has had.</summary>
/// <param name="Id">In the shop's library.</param>
/// <param name="Ordinal">1 is the oldest.</param>
/// <param name="At">When it was laid beside the job; for the first one perhaps when it was drawn.</param>
public sealed record SheetVersion(int Id, int Ordinal, string Title, string Text, DateTimeOffset At);
