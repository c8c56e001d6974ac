using Slowglow.Quantities;
using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parts.Diode;

/// <summary>Devices for diodes that a drawing names by a figure or a colour alone.</summary>
internal static class MadeUpDiode
{
    private const double ThermalVolts = 0.02585;

    /// <summary>A zener of these volts: specified at a quarter of its rated power, the usual test current.</summary>
    internal static Device Zener(double volts, double watts, double tolerance) =>
        new()
        {
            Type = $"zener {Engineering.Format(volts, "V")}",
            AlsoCalled = [],
            Kind = DeviceKind.Zener,
            Pinout = Pinout,
            Law = new Dictionary<string, double>
            {
                ["is"] = 1e-14,
                ["n"] = 1.05,
                ["rs"] = 0.5,
                ["bv"] = volts,
                ["rz"] = SlopeOhms(volts, watts),
                ["iz"] = watts / (4 * volts),
            },
            Spread = new Dictionary<string, double> { ["bv"] = tolerance / 3 },
            Limits = new Dictionary<string, double> { ["watts"] = watts, ["amps"] = watts / volts },
            Source = "made up from its volts and watts, common practice, no source",
        };

    // Slope resistance is least near 7 V and grows on both sides; about 5 ohms there for 400 to 500 mW parts.
    private static double SlopeOhms(double volts, double watts)
    {
        var small =
            volts < 5 ? 60.0
            : volts < 7 ? 10.0
            : 6.0 * Math.Pow(volts / 7, 1.8);
        return small * 0.5 / watts;
    }

    /// <summary>An LED of that colour at its usual volts for 10 mA.</summary>
    internal static Device Led(string colour)
    {
        var forward = colour switch
        {
            "red" => 1.85,
            "amber" or "orange" or "yellow" => 2.0,
            "green" => 2.1,
            _ => 3.1,
        };
        const double n = 2.0;
        const double rs = 3.0;
        return new Device
        {
            Type = $"LED {colour}",
            AlsoCalled = [],
            Kind = DeviceKind.Led,
            Pinout = Pinout,
            Law = new Dictionary<string, double>
            {
                ["is"] = 0.01 / Math.Exp((forward - (0.01 * rs)) / (n * ThermalVolts)),
                ["n"] = n,
                ["rs"] = rs,
                ["bv"] = 5,
            },
            Spread = new Dictionary<string, double> { ["is"] = 0.5 },
            Limits = new Dictionary<string, double>
            {
                ["volts"] = 5,
                ["amps"] = 0.02,
                ["watts"] = 0.02 * forward,
            },
            Source = $"made up: {Engineering.Format(forward, "V")} at 10 mA, common practice, no source",
        };
    }

    private static IReadOnlyList<DevicePin> Pinout => [new("1", 1, "a"), new("2", 1, "k")];
}
