namespace Slowglow.Workshop.Timeline;

/// <summary>Work that was done: a timer stopped, or minutes typed.</summary>
public sealed class HoursWorked : EntryWith<Labour.Worked>;
