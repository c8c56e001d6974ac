using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Devices;

/// <summary>
/// A resistance-coupled stage at rest and for small signals: anode load to the supply, cathode resistor bypassed, screen resistor
/// bypassed (pentodes), following grid leak across the anode load.
/// </summary>
internal sealed record CoupledStage(
    double Supply,
    double AnodeLoad,
    double ScreenResistor,
    double CathodeResistor,
    double NextLeak
)
{
    public static CoupledStage Of(ValveRow row) =>
        new(
            row.Number("supply_volts"),
            row.Number("anode_load_kilohms") * 1e3,
            row.Number("screen_resistor_kilohms") * 1e3,
            row.Number("cathode_resistor_ohms"),
            row.Number("following_grid_leak_kilohms") * 1e3
        );

    public (double Anode, double Screen, double Gain) Solve(Device valve) =>
        valve.Kind == DeviceKind.Triode ? SolveTriode(valve) : SolvePentode(valve);

    private (double Anode, double Screen, double Gain) SolveTriode(Device valve)
    {
        double AnodeVolts(double amps) => Supply - (amps * (AnodeLoad + CathodeResistor));
        var rest = Bisection.Zero(
            i => PlainValveLaw.TriodeAnode(valve, AnodeVolts(i), -i * CathodeResistor) - i,
            0,
            Supply / (AnodeLoad + CathodeResistor)
        );
        var (anode, grid) = (AnodeVolts(rest), -rest * CathodeResistor);
        var gm = Bisection.Slope(g => PlainValveLaw.TriodeAnode(valve, anode, g), grid, 0.01);
        var ga = Bisection.Slope(a => PlainValveLaw.TriodeAnode(valve, a, grid), anode, 0.1);
        return (rest, 0, gm / (ga + LoadSiemens));
    }

    private (double Anode, double Screen, double Gain) SolvePentode(Device valve)
    {
        var cathode = Bisection.Zero(
            k =>
            {
                var (a, s) = AtCathode(valve, k);
                return ((Supply - k - a) / AnodeLoad) + ((Supply - k - s) / ScreenResistor) - (k / CathodeResistor);
            },
            0,
            Supply
        );
        var (anode, screen) = AtCathode(valve, cathode);
        var gm = Bisection.Slope(g => PlainValveLaw.PentodeAnode(valve, anode, screen, g), -cathode, 0.01);
        var ga = Bisection.Slope(a => PlainValveLaw.PentodeAnode(valve, a, screen, -cathode), anode, 0.5);
        return ((Supply - cathode - anode) / AnodeLoad, (Supply - cathode - screen) / ScreenResistor, gm / (ga + LoadSiemens));
    }

    private double LoadSiemens => (1 / AnodeLoad) + (double.IsNaN(NextLeak) ? 0 : 1 / NextLeak);

    /// <summary>Anode and screen volts over the cathode when the cathode stands at a potential.</summary>
    private (double Anode, double Screen) AtCathode(Device valve, double cathode)
    {
        var top = Supply - cathode;
        double Anode(double screen) =>
            Bisection.Zero(a => ((top - a) / AnodeLoad) - PlainValveLaw.PentodeAnode(valve, a, screen, -cathode), 0, top);
        var found = Bisection.Zero(
            s => ((top - s) / ScreenResistor) - PlainValveLaw.PentodeScreen(valve, Anode(s), s, -cathode),
            0,
            top
        );
        return (Anode(found), found);
    }
}
