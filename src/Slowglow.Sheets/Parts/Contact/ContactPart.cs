namespace Slowglow.Sheets.Parts.Contact;

/// <summary>Switch contact, or a contact of a switched jack. Pins: 1, 2.</summary>
public sealed record ContactPart : Part
{
    /// <summary>Name of the switch, or designator of the jack.</summary>
    public required string SwitchName { get; init; }

    /// <summary>Closed in this position.</summary>
    public required string Position { get; init; }
}
