using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Optocoupler;

/// <summary>LED and light-dependent resistor in one case. Pins: a, k of the LED, ra, rb of the resistor.</summary>
public sealed record OptocouplerPart : Part
{
    /// <summary>Kind is Optocoupler.</summary>
    public required Device Device { get; init; }
}
