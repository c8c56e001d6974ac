namespace Slowglow.Web.Desks;

/// <summary>Something worked out, and what it was worked out for.</summary>
/// <param name="For">Names the state of the job that it belongs to; when the job has moved on it is stale.</param>
/// <param name="Took">How long it took.</param>
public sealed record Solved<T>(T Value, string For, TimeSpan Took);
