namespace Slowglow.Workshop.Timeline;

/// <param name="Reason">Why it is ready without a safety test that passed; empty when one has.</param>
/// <param name="Bin">Where it stands.</param>
public sealed record Readiness(string Reason, string Bin);
