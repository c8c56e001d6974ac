namespace Slowglow.Workshop.Timeline;

/// <summary>An invoice or a credit note was issued.</summary>
public sealed class PaperIssued : EntryWith<Papers.IssuedPaper>;
