using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Devices;

/// <summary>
/// The laws of docs/add-a-device.md for valves, one figure at a time and as plainly as they are written there: slow, obvious, a check
/// on anything faster. Volts against the cathode, amperes.
/// </summary>
internal static class PlainValveLaw
{
    /// <summary>ln(1 + e^x), which is x itself when x is large.</summary>
    public static double SoftPlus(double x) => x > 40 ? x : Math.Log(1 + Math.Exp(x));

    public static double TriodeAnode(Device valve, double anode, double grid)
    {
        if (anode <= 0)
        {
            return 0;
        }

        var drive = (1 / valve["mu"]) + ((grid + valve["vct"]) / Math.Sqrt(valve["kvb"] + (anode * anode)));
        var e = anode / valve["kp"] * SoftPlus(valve["kp"] * drive);
        return 2 * Math.Pow(e, valve["ex"]) / valve["kg1"];
    }

    public static double PentodeAnode(Device valve, double anode, double screen, double grid) =>
        anode <= 0 ? 0 : SpaceTerm(valve, anode, screen, grid) / valve["kg1"] * Math.Atan(anode / valve["kvb"]);

    public static double PentodeScreen(Device valve, double anode, double screen, double grid)
    {
        var (hasShare, perDrive) = (valve.Law.TryGetValue("kns", out var kns), valve.Law.GetValueOrDefault("kne"));
        var fromScreen = hasShare ? kns * Math.Max(screen, 1e-6) : 0;
        var knee = hasShare || perDrive > 0 ? fromScreen + (perDrive * Drive(valve, anode, screen, grid)) : valve["kvb"];
        var missed = Missed(anode, Math.Max(knee, 1e-30));
        var turnedBack =
            valve.Law.GetValueOrDefault("back") * Math.PI / 2 / valve["kg1"] * Math.Pow(Missed(anode, valve["kvb"]), 2);
        return SpaceTerm(valve, anode, screen, grid) * (((1 + (valve["ks"] * missed)) / valve["kg2"]) + turnedBack);
    }

    public static double Grid(Device valve, double grid) =>
        valve["gg"] * Math.Pow(SoftPlus(valve["cg"] * grid) / valve["cg"], valve["xi"]);

    public static double Rectifier(Device valve, double anode) => anode <= 0 ? 0 : valve["k"] * Math.Pow(anode, 1.5);

    /// <summary>1 where the anode collects nothing, half at the knee, 0 far above it.</summary>
    private static double Missed(double anode, double knee) => 1 - (2 / Math.PI * Math.Atan(Math.Max(anode, 0) / knee));

    private static double SpaceTerm(Device valve, double anode, double screen, double grid) =>
        2 * Math.Pow(Drive(valve, anode, screen, grid), valve["ex"]);

    private static double Drive(Device valve, double anode, double screen, double grid)
    {
        if (screen <= 0)
        {
            return 0;
        }

        var pulled = grid + (valve.Law.TryGetValue("mua", out var mua) ? Math.Max(anode, 0) / mua : 0);
        return screen / valve["kp"] * SoftPlus(valve["kp"] * ((1 / valve["mu"]) + (pulled / screen)));
    }
}
