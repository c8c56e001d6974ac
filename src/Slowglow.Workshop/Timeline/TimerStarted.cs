namespace Slowglow.Workshop.Timeline;

/// <summary>Somebody began to work on it. The timer runs until it is stopped, whatever the program does meanwhile.</summary>
public sealed class TimerStarted : EntryWith<Labour.TimerStart>;
