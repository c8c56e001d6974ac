namespace Slowglow.Sheets.Parts.Loudspeaker;

/// <summary>Loudspeaker or dummy load. Pins: 1, 2.</summary>
public sealed record LoudspeakerPart : Part
{
    public required double NominalOhms { get; init; }

    /// <summary>0.8 of nominal unless given; equal to nominal for a resistive load.</summary>
    public required double DcOhms { get; init; }
}
