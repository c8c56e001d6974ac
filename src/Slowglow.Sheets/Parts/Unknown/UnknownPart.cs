namespace Slowglow.Sheets.Parts.Unknown;

/// <summary>Stands in for what the drawing does not explain: a resistance between two nets. Pins: 1, 2.</summary>
public sealed record UnknownPart : Part
{
    public required double Ohms { get; init; }
}
