using Slowglow.Sheets.Devices;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>Anode characteristics of a valve section as made, by the law that the solver uses.</summary>
public static class ValveCurves
{
    /// <summary>Anode current, amperes, at volts against the cathode. The type must be a triode or a pentode.</summary>
    /// <param name="screenVolts">Ignored for triodes.</param>
    public static double AnodeAmps(Device device, double anodeVolts, double gridVolts, double screenVolts = 0) =>
        device.Kind switch
        {
            DeviceKind.Triode => Anode(new TriodeLaw(), TriodeConstants(device), anodeVolts, gridVolts),
            DeviceKind.Pentode => Anode(new PentodeLaw(), PentodeConstants.Of(device), anodeVolts, gridVolts, screenVolts),
            _ => throw new ArgumentException($"The {device.Type} has no grid.", nameof(device)),
        };

    private static double[] TriodeConstants(Device device) =>
        [
            device["mu"],
            device["ex"],
            device["kg1"],
            device["kp"],
            device["kvb"],
            device["vct"],
            device["gg"],
            device["cg"],
            device["xi"],
            1,
        ];

    private static double Anode(Law law, double[] constants, params double[] volts)
    {
        var currents = new Lane[law.Ports];
        var slopes = new Lane[law.Ports * law.Ports];
        law.Evaluate(Array.ConvertAll(volts, Lanes.All), Array.ConvertAll(constants, Lanes.All), currents, slopes);
        return currents[0][0];
    }
}
