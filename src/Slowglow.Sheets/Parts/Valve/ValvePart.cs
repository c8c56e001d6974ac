using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Valve;

/// <summary>A valve. Pins by base number with electrodes a, g, k, g2, h (a2, g_2, k2 for the second section: see Device.Pinout).</summary>
public sealed record ValvePart : Part
{
    /// <summary>Kind is Triode, Pentode, RectifierValve or GasRegulator.</summary>
    public required Device Device { get; init; }
}
