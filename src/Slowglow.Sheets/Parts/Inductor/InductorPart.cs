namespace Slowglow.Sheets.Parts.Inductor;

/// <summary>Inductor or choke. Pins: 1, 2.</summary>
public sealed record InductorPart : Part
{
    public required double Henries { get; init; }

    /// <summary>Copper, ohms, &gt; 0: given or assumed.</summary>
    public required double CopperOhms { get; init; }
    public required double Tolerance { get; init; }
}
