namespace Slowglow.Drawing.Symbols;

/// <summary>A circle.</summary>
internal sealed record Ring(double X, double Y, double Radius, Fill Fill = Fill.None) : Stroke;
