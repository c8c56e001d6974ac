namespace Slowglow.Bench.Writing;

/// <summary>A pin of a part on the sheet.</summary>
/// <param name="Electrode">Empty when it has no name of its own.</param>
/// <param name="IsFree">Nothing else is on it yet.</param>
public sealed record TypedPin(string Number, string Electrode, string Net, bool IsFree);
