using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Circuits.Models.Valve;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Splits the hum at the output. The rectified rails are held stiffly, one volt of each mains harmonic is put on one after the other, and
/// the answer at the output multiplied by the ripple that the rail has. A heater that leaks to its cathode is taken the same way: its volts
/// in series with the leak. What neither explains came another way.
/// </summary>
internal sealed class HumQuestion(AskedWorld asked, Fixtures.PathFixture path)
{
    private const int Highest = 12;

    /// <summary>A whole heater lets next to nothing through: below this share of the hum it gets no line.</summary>
    private const double LeastShare = 1e-3;

    private readonly (string Valve, int Branch, int Row)[] heaters =
    [
        .. asked
            .Circuit.Models.OfType<ValveModel>()
            .SelectMany(v => v.HeaterLeaks.Select(h => (v.Designator, asked.Parts.BranchAt(h.Slot), h.HeaterRow))),
    ];

    public HumSplit Ask()
    {
        var world = asked.State;
        var holds = asked.Circuit.Fixtures.Holds;
        var whole = new Complex[Highest + 1];
        var rest = new Complex[Highest + 1];
        var byRail = holds.Select(_ => new Complex[Highest + 1]).ToArray();
        var byHeater = heaters.Select(_ => new Complex[Highest + 1]).ToArray();
        var sweep = new SignalSweep(asked, null).WithRailsHeld();
        for (var h = 1; h <= Highest; h++)
        {
            whole[h] = rest[h] = Harmonic(path.Out, h);
            sweep.At(h * asked.Circuit.Sheet.Mains.Frequency);
            for (var r = 0; r < holds.Count; r++)
            {
                var answer = sweep.Signal.Respond(asked.Parts.BranchAt(holds[r].Siemens));
                byRail[r][h] = path.Out < 0 ? 0 : answer[path.Out] * Harmonic(holds[r].Row, h);
                rest[h] -= byRail[r][h];
            }

            for (var n = 0; n < heaters.Length && path.Out >= 0; n++)
            {
                // Volts on the heater's end push into the cathode what a source in series the other way round would.
                byHeater[n][h] = -sweep.Signal.Respond(heaters[n].Branch)[path.Out] * Harmonic(heaters[n].Row, h);
                rest[h] -= byHeater[n][h];
            }
        }

        List<HumCause> causes =
        [
            .. holds.Select((hold, r) => Cause(NetOf(hold.Row), world.RmsBetween(hold.Row, -1), byRail[r])),
            .. Heaters(byHeater),
            Cause("", double.NaN, rest),
        ];
        return new HumSplit(
            world.RmsBetween(path.Out, -1),
            whole[1].Magnitude,
            whole[2].Magnitude,
            [.. causes.OrderByDescending(c => c.OutputVolts)]
        );
    }

    /// <summary>One line a valve: the leaks of its sections add with their phases.</summary>
    private IEnumerable<HumCause> Heaters(Complex[][] byHeater)
    {
        var least = LeastShare * asked.State.RmsBetween(path.Out, -1);
        foreach (var valve in heaters.Select((h, n) => (h.Valve, h.Row, Parts: byHeater[n])).GroupBy(h => h.Valve))
        {
            Complex[] sum =
            [
                .. Enumerable.Range(0, Highest + 1).Select(k => valve.Aggregate(Complex.Zero, (s, v) => s + v.Parts[k])),
            ];
            var cause = Cause("", asked.State.RmsBetween(valve.First().Row, -1), sum) with { Heater = valve.Key };
            if (cause.OutputVolts > least)
            {
                yield return cause;
            }
        }
    }

    private string NetOf(int row) => asked.Circuit.Rows.First(r => r.Value == row).Key;

    private static HumCause Cause(string net, double ripple, Complex[] parts) =>
        new(net, ripple, Math.Sqrt(parts.Sum(p => p.Magnitude * p.Magnitude)), parts[1].Magnitude, parts[2].Magnitude);

    /// <summary>Volts rms of a mains harmonic of an unknown.</summary>
    private Complex Harmonic(int row, int order)
    {
        var world = asked.State;
        Complex sum = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            sum +=
                (world.At(k, row) - world.MeanAt(row))
                * Complex.FromPolarCoordinates(Math.Sqrt(2) / world.Steps, -2 * Math.PI * order * (k + 1) / world.Steps);
        }

        return sum;
    }
}
