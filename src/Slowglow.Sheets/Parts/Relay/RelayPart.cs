namespace Slowglow.Sheets.Parts.Relay;

/// <summary>
/// A relay's coil. Pins: 1, 2. Its contacts are contacts of a switch that goes by the relay's designator, with positions "off" and "on".
/// </summary>
public sealed record RelayPart : Part
{
    /// <summary>Coil, ohms, &gt; 0: given or assumed.</summary>
    public required double Ohms { get; init; }

    /// <summary>Volts rms at which it has surely pulled in.</summary>
    public double PullInVolts => 0.75 * RatedVolts;

    /// <summary>Volts rms at which it has surely let go.</summary>
    public double ReleaseVolts => 0.1 * RatedVolts;
}
