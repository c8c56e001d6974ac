namespace Slowglow.Bench.Writing;

/// <param name="Job">Number of the job that has it.</param>
/// <param name="Title">Maker and model.</param>
public sealed record OtherSheet(int Job, string Title);
