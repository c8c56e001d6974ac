namespace Slowglow.Sheets;

/// <summary>Something to tell the technician about a document or a circuit: what is wrong, where, and what would be right.</summary>
/// <param name="Severity">Note, warning or error.</param>
/// <param name="Place">Line and column, or none.</param>
/// <param name="Text">What is wrong, in the trade's words.</param>
/// <param name="Remedy">What would be right; empty when the text says it.</param>
/// <param name="Subject">Designator or net concerned, when there is one.</param>
public sealed record Finding(Severity Severity, Place Place, string Text, string Remedy = "", string? Subject = null);
