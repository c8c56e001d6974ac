namespace Slowglow.Workshop.Jobs;

/// <summary>A timer that has not been stopped.</summary>
/// <param name="By">Whose; null where the shop is one person.</param>
public sealed record RunningTimer(int Sequence, Labour.TimerStart Start, DateTimeOffset Since, string? By);
