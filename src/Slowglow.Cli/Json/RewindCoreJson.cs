using Slowglow.Power.Rewinding;

namespace Slowglow.Cli.Json;

/// <summary>Iron of a design.</summary>
internal sealed record RewindCoreJson(
    string Size,
    double Stack,
    string Iron,
    double Kilograms,
    double VoltAmperes,
    double TurnsPerVolt,
    double Tesla,
    double HighTesla,
    double IronWatts,
    double CopperWatts,
    double OffLoadAmps,
    double Fill,
    double Rise
)
{
    public static RewindCoreJson From(WoundDesign d) =>
        new(
            d.Core.Lamination.Name,
            d.Core.Stack,
            d.Steel.Name,
            d.Core.Kilograms,
            d.VoltAmperes,
            d.TurnsPerVolt,
            d.Tesla,
            d.HighTesla,
            d.IronWatts,
            d.CopperWatts,
            d.OffLoadAmps,
            d.Fill,
            d.RiseKelvin
        );
}
