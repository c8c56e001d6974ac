using Slowglow.Power.Rewinding;

namespace Slowglow.Cli.Json;

/// <summary>A winding as it is to be wound; <c>wire</c> is the bare diameter in millimetres, <c>turns</c> one figure a section.</summary>
internal sealed record RewindWindingJson(
    string Name,
    bool Primary,
    IReadOnlyList<int> Turns,
    double Wire,
    double Enamelled,
    int Awg,
    int Strands,
    double Metres,
    int Layers,
    double ColdOhms,
    double HotOhms,
    double OffLoadVolts,
    double LoadedVolts,
    double Amps,
    double Density,
    double Watts,
    double Regulation
)
{
    public static RewindWindingJson From(WoundWinding w) =>
        new(
            w.Name,
            w.Need.IsPrimary,
            w.SectionTurns,
            w.Wire.BareMillimetres,
            w.Wire.OverallMillimetres,
            w.Wire.NearestGauge,
            w.Strands,
            w.Metres,
            w.Layers,
            w.ColdOhms,
            w.HotOhms,
            w.OffLoadVolts,
            w.LoadedVolts,
            w.Amps,
            w.Density,
            w.Watts,
            w.Regulation
        );
}
