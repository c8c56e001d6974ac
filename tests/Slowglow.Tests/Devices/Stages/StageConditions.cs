using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Devices.Stages;

/// <summary>Under what an output stage was measured. Volts are over the cathode at rest, as the makers print them.</summary>
internal sealed record StageConditions(
    Device Device,
    int Valves,
    double AnodeVolts,
    double ScreenVolts,
    double GridVolts,
    double CathodeOhms,
    double LoadOhms,
    double CrestPerGrid
)
{
    /// <summary>Share of the primary's turns at which the screen is tapped; 1 is triode-connected, 0 a supply of its own.</summary>
    public double ScreenTap { get; init; }

    /// <summary>Ohms from the anode supply to the screens, which all hang on one point; 0 for a supply of their own.</summary>
    public double ScreenFeedOhms { get; init; }

    /// <summary>Ohms from that point to the cathodes.</summary>
    public double ScreenBleedOhms { get; init; }

    /// <summary>The printed currents are those without signal, the printed watts those with it.</summary>
    public bool CurrentsAtRest { get; init; }

    /// <summary>Each valve has a cathode resistor; otherwise all share one.</summary>
    public bool OneResistorEach { get; init; }

    /// <summary>An output without its drive in class AB1, where the grids are by definition driven until they begin to draw current: to the cathode.</summary>
    public static bool IsFullyDriven(ValveRow row) =>
        row["class"] == "AB1"
        && row.Has("grid_volts")
        && row.Has("output_watts")
        && !row.Has("drive_volts_rms_per_grid")
        && !row.Has("drive_volts_peak_total");

    /// <summary>The row's conditions. A load left out is taken as 5 kilohms: at rest it carries nothing.</summary>
    public static StageConditions Of(ValveRow row)
    {
        var connection = row["connection"];
        var tap =
            connection.Contains("40 % tap", StringComparison.Ordinal) ? 0.4
            : connection is "triode-connected" ? 1
            : connection is "ultra-linear" or "distributed load" ? 0.43
            : 0;
        var fixedBias = row["bias"].StartsWith("fixed", StringComparison.Ordinal);
        var valves = (int)row.Number("valves");
        var perGrid = row.Number("drive_volts_rms_per_grid") * Math.Sqrt(2);
        var total = row.Number("drive_volts_peak_total") / valves;
        return new StageConditions(
            row.Device,
            valves,
            row.Number("anode_volts"),
            row.Number("screen_volts"),
            row.Number("grid_volts"),
            fixedBias || !row.Has("cathode_resistor_ohms") ? 0 : row.Number("cathode_resistor_ohms"),
            row.Has("load_ohms") ? row.Number("load_ohms") : 5000,
            IsFullyDriven(row) ? -row.Number("grid_volts")
                : double.IsNaN(perGrid) ? total
                : perGrid
        )
        {
            ScreenTap = tap,
            // The row does not say from where: 3 kilohms with what screens and bleeder draw make up the 65 V between the printed anode and
            // screen volts.
            ScreenFeedOhms = IsFed(row) ? 3000 : 0,
            ScreenBleedOhms = IsFed(row) ? 15000 : 0,
            CurrentsAtRest = row["note"].Contains("rest current", StringComparison.Ordinal),
            OneResistorEach =
                row["bias"].StartsWith("separate", StringComparison.Ordinal)
                || row["source"].StartsWith("Marconi", StringComparison.Ordinal),
        };
    }

    private static bool IsFed(ValveRow row) =>
        row["note"].Contains("screens through a common 3 kilohm, 15 kilohm bleed to the cathodes", StringComparison.Ordinal);
}
