namespace Slowglow.Workshop.Timeline;

/// <summary>The shop gave money back.</summary>
public sealed class MoneyReturned : EntryWith<Accounts.Payment>;
