namespace Slowglow.Workshop.Collecting;

/// <summary>A reminder that the shop's rule asks for today.</summary>
/// <param name="Whom">Supplier; empty for the customer.</param>
/// <param name="Of">What is missing; empty for the unit itself.</param>
/// <param name="Since">Ready since that day, or nothing heard since.</param>
/// <param name="Number">Which reminder it is, from 1.</param>
public sealed record DueReminder(ReminderKind Kind, string Whom, string Of, DateOnly Since, int Number);
