namespace Slowglow.Bench.Writing;

/// <summary>Text that was typed and not saved yet.</summary>
/// <param name="Window">The window it was typed in.</param>
/// <param name="BasedOn">Number of the sheet it was typed over; null = none.</param>
public sealed record TypedDraft(string Window, string Text, int? BasedOn, DateTimeOffset At);
