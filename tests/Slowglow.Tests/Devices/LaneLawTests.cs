using System.Runtime.Intrinsics;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Sheets.Devices;
using Slowglow.Solving;

namespace Slowglow.Tests.Devices;

/// <summary>The solver's valve laws say the same as the plain ones, for every valve of the library.</summary>
public class LaneLawTests
{
    private static readonly string[] TriodeConstants = ["mu", "ex", "kg1", "kp", "kvb", "vct", "gg", "cg", "xi"];

    public static TheoryData<string> Valves() =>
        [.. DeviceLibrary.Shipped.All.Where(d => d.Kind <= DeviceKind.RectifierValve).Select(d => d.Type)];

    [Theory]
    [MemberData(nameof(Valves))]
    public void SameCurrentsAsThePlainLaw(string type)
    {
        var valve = DeviceLibrary.Shipped.Find(type)!;
        foreach (var anode in new[] { -10.0, 0, 0.5, 15, 90, 250, 450 })
        {
            foreach (var grid in new[] { -45.0, -12, -3, -1, -0.2, 0, 1.5 })
            {
                // The solver's law has a rounded corner of 20 mV where the anode stops collecting: it stands higher by 0.0001 over its
                // volts, and may differ by what that makes. The rest is the arctangent's series.
                var collecting = Math.Max(anode, 0);
                var tail = 1e-4 / Math.Max(Math.Abs(anode), 0.005);
                var above = Currents(valve, collecting + tail, grid, 220);
                var below = Currents(valve, collecting - tail, grid, 220);
                foreach (var (at, more, less) in Currents(valve, anode, grid, 220).Zip(above, below))
                {
                    var corner = Math.Abs(more.Plain - less.Plain) + 1e-13;
                    Assert.Equal(at.Plain, at.Lane, (1e-6 * Math.Abs(at.Plain)) + corner);
                }
            }
        }
    }

    private static IEnumerable<(double Plain, double Lane)> Currents(Device valve, double anode, double grid, double screen)
    {
        switch (valve.Kind)
        {
            case DeviceKind.Triode:
                var triode = Evaluate(new TriodeLaw(), [.. TriodeConstants.Select(c => valve[c]), 1], anode, grid);
                return [(PlainValveLaw.TriodeAnode(valve, anode, grid), triode[0]), (PlainValveLaw.Grid(valve, grid), triode[1])];
            case DeviceKind.Pentode:
                var pentode = Evaluate(new PentodeLaw(), PentodeConstants.Of(valve), anode, grid, screen);
                return
                [
                    (PlainValveLaw.PentodeAnode(valve, anode, screen, grid), pentode[0]),
                    (PlainValveLaw.Grid(valve, grid), pentode[1]),
                    (PlainValveLaw.PentodeScreen(valve, anode, screen, grid), pentode[2]),
                ];
            default:
                return [(PlainValveLaw.Rectifier(valve, anode), Evaluate(new RectifierLaw(), [valve["k"], 1], anode)[0])];
        }
    }

    private static double[] Evaluate(Law law, double[] constants, params double[] volts)
    {
        var currents = new Vector256<double>[law.Ports];
        var slopes = new Vector256<double>[law.Ports * law.Ports];
        law.Evaluate([.. volts.Select(Vector256.Create)], [.. constants.Select(Vector256.Create)], currents, slopes);
        return [.. currents.Select(c => c.GetElement(1))];
    }
}
