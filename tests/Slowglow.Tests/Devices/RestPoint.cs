using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Devices;

/// <summary>A valve at rest with set volts, and its slopes there.</summary>
internal sealed record RestPoint(double AnodeMilliamps, double ScreenMilliamps, double Transconductance, double AnodeKilohms)
{
    public double Amplification => Transconductance * AnodeKilohms;

    /// <summary>A printed grid voltage counts; where only a cathode resistor is given the valve finds its own.</summary>
    public static RestPoint Of(ValveRow row)
    {
        var resistor = row.Number("cathode_resistor_ohms");
        if (row.Has("grid_volts"))
        {
            return At(row, row.Number("anode_volts"), row.Number("screen_volts"), row.Number("grid_volts"));
        }

        // A supply is over everything; printed anode volts are over the cathode.
        var supply = row.Has("anode_supply_volts") ? row.Number("anode_supply_volts") : double.NaN;
        RestPoint AtCathode(double k) =>
            At(row, double.IsNaN(supply) ? row.Number("anode_volts") : supply - k, row.Number("screen_volts"), -k);
        var cathode = Bisection.Zero(
            k => ((AtCathode(k).AnodeMilliamps + AtCathode(k).ScreenMilliamps) / 1e3) - (k / resistor),
            0,
            50
        );
        return AtCathode(cathode);
    }

    private static RestPoint At(ValveRow row, double anode, double screen, double grid)
    {
        var valve = row.Device;
        if (row["connection"] == "triode-connected")
        {
            // Makers give the sum of anode and screen as the anode current.
            return From(
                (a, g) => PlainValveLaw.PentodeAnode(valve, a, a, g) + PlainValveLaw.PentodeScreen(valve, a, a, g),
                anode,
                grid,
                0
            );
        }

        return valve.Kind == DeviceKind.Triode
            ? From((a, g) => PlainValveLaw.TriodeAnode(valve, a, g), anode, grid, 0)
            : From(
                (a, g) => PlainValveLaw.PentodeAnode(valve, a, screen, g),
                anode,
                grid,
                PlainValveLaw.PentodeScreen(valve, anode, screen, grid)
            );
    }

    private static RestPoint From(Func<double, double, double> amps, double anode, double grid, double screenAmps) =>
        new(
            amps(anode, grid) * 1e3,
            screenAmps * 1e3,
            Bisection.Slope(g => amps(anode, g), grid, 0.01) * 1e3,
            1e-3 / Bisection.Slope(a => amps(a, grid), anode, 0.1)
        );
}
