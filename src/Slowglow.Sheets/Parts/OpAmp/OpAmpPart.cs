using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.OpAmp;

/// <summary>Op-amp package of one, two or four sections. Electrodes: in+1, in-1, out1, in+2 ..., v+, v-.</summary>
public sealed record OpAmpPart : Part
{
    public required Device Device { get; init; }
}
