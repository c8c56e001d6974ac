namespace Slowglow.Sheets.Parts.Capacitor;

/// <summary>Pins: 1 (plus), 2 (minus).</summary>
public sealed record CapacitorPart : Part
{
    /// <summary>Farads, &gt; 0.</summary>
    public required double Farads { get; init; }

    /// <summary>Fraction, given or assumed.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Never <see cref="CapacitorStyle.Unsaid"/>: assumed from the value when the drawing does not say.</summary>
    public required CapacitorStyle Style { get; init; }
}
