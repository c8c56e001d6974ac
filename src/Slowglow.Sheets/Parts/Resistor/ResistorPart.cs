namespace Slowglow.Sheets.Parts.Resistor;

/// <summary>Pins: 1, 2.</summary>
public sealed record ResistorPart : Part
{
    /// <summary>Ohms, &gt; 0.</summary>
    public required double Ohms { get; init; }

    /// <summary>Fraction, given or assumed.</summary>
    public required double Tolerance { get; init; }
    public ResistorStyle Style { get; init; }
}
