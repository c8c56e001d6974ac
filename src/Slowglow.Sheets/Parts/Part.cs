namespace Slowglow.Sheets.Parts;

/// <summary>A part of the drawing. Each kind is a record of its own in the folder of its name.</summary>
public abstract record Part
{
    public required string Designator { get; init; }

    /// <summary>Where the designator stands in the sheet.</summary>
    public Place Place { get; init; }

    /// <summary>In the order that the kind documents.</summary>
    public required IReadOnlyList<Pin> Pins { get; init; }

    /// <summary>Rated watts; NaN when the drawing gives none and nothing is assumed.</summary>
    public double RatedWatts { get; init; } = double.NaN;

    /// <summary>Rated volts; NaN when the drawing gives none.</summary>
    public double RatedVolts { get; init; } = double.NaN;

    /// <summary>Minutes to get at the part itself (lift a leg, replace); NaN = default of the kind.</summary>
    public double AccessMinutes { get; init; } = double.NaN;

    /// <summary>What one would call it when ordering: "100k 1 W", "12AX7", "22u 400 V".</summary>
    public required string Description { get; init; }

    /// <summary>Net on the pin of that name (number or electrode), or null.</summary>
    public string? NetOf(string pin) => Pins.FirstOrDefault(p => p.Is(pin))?.Net;
}
