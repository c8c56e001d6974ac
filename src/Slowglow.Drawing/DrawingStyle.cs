namespace Slowglow.Drawing;

/// <summary>How the drawing is made.</summary>
/// <param name="Zigzag">Resistors as the zigzag of IEEE 315 instead of the box of IEC 60617.</param>
public sealed record DrawingStyle(bool Zigzag = false);
