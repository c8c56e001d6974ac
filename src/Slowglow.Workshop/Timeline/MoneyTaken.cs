namespace Slowglow.Workshop.Timeline;

/// <summary>The customer paid something.</summary>
public sealed class MoneyTaken : EntryWith<Accounts.Payment>;
