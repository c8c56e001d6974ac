namespace Slowglow.Sheets.Parts.Pot;

/// <summary>Pot or trimmer. Pins: 1 top, 2 wiper, 3 bottom.</summary>
public sealed record PotPart : Part
{
    public required double Ohms { get; init; }
    public required double Tolerance { get; init; }
    public Taper Taper { get; init; }

    /// <summary>Name of its entry under controls; null when it is not tied to one.</summary>
    public string? ControlName { get; init; }

    /// <summary>True for a trimmer: set by a bench, its rotation is a guess with a wide spread.</summary>
    public bool IsTrimmer { get; init; }

    /// <summary>Number of positions of a stepped pot or ladder attenuator, at least 2; 0 for a continuous track.</summary>
    public int Steps { get; init; }

    /// <summary>Decibels from step to step, the top one being 0 dB and the lowest silence; NaN when the taper rules.</summary>
    public double StepDecibels { get; init; } = double.NaN;

    /// <summary>Rotation 0 to 1 that expectations are worked at; the wiper nears top as it nears 1.</summary>
    public required double Rotation { get; init; }
}
