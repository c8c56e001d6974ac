using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Transistor;

/// <summary>BJT (pins c b e), JFET or MOSFET (pins d g s), in that order.</summary>
public sealed record TransistorPart : Part
{
    /// <summary>Kind is Bjt, Jfet or Mosfet.</summary>
    public required Device Device { get; init; }
}
