using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Diode;

/// <summary>Diode, zener or LED. Pins: 1 anode ("a"), 2 cathode ("k").</summary>
public sealed record DiodePart : Part
{
    /// <summary>Kind is Diode, Zener or Led. For <c>zener 12V</c> a device is made up for those volts.</summary>
    public required Device Device { get; init; }
}
