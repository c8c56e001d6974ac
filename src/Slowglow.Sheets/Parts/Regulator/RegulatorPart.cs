using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Regulator;

/// <summary>Three-terminal regulator. Electrodes: in, gnd (or adj), out.</summary>
public sealed record RegulatorPart : Part
{
    public required Device Device { get; init; }
}
