namespace Slowglow.Drawing.Symbols;

/// <summary>Words that belong to the symbol itself (a plus, a section's name inside its triangle); they are never turned.</summary>
internal sealed record Writing(double X, double Y, string Text, string Class, string Anchor = "middle") : Stroke;
