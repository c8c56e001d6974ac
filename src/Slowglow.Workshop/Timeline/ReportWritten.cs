namespace Slowglow.Workshop.Timeline;

/// <summary>What was wrong and what was done was written up. The last one counts.</summary>
public sealed class ReportWritten : EntryWith<Papers.RepairReport>;
