namespace Slowglow.Sheets.Parts.Fuse;

/// <summary>Pins: 1, 2.</summary>
public sealed record FusePart : Part
{
    /// <summary>Rated amperes, &gt; 0.</summary>
    public required double RatedAmps { get; init; }

    public FuseSpeed Speed { get; init; }

    /// <summary>Cold ohms, given or assumed.</summary>
    public required double Ohms { get; init; }
}
