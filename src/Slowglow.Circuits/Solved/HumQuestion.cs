using System.Numerics;
using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Splits the hum at the output. The rectified rails are held stiffly, one volt of each mains harmonic is put on one after the other, and
/// the answer at the output multiplied by the ripple that the rail has. What the rails do not explain came another way.
/// </summary>
internal sealed class HumQuestion(AskedWorld asked, Fixtures.PathFixture path)
{
    private const int Highest = 12;

    public HumSplit Ask()
    {
        var world = asked.State;
        var holds = asked.Circuit.Fixtures.Holds;
        var whole = new Complex[Highest + 1];
        var rest = new Complex[Highest + 1];
        var byRail = holds.Select(_ => new Complex[Highest + 1]).ToArray();
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
        }

        List<HumCause> causes =
        [
            .. holds.Select((hold, r) => Cause(NetOf(hold.Row), world.RmsBetween(hold.Row, -1), byRail[r])),
            Cause("", double.NaN, rest),
        ];
        return new HumSplit(
            world.RmsBetween(path.Out, -1),
            whole[1].Magnitude,
            whole[2].Magnitude,
            [.. causes.OrderByDescending(c => c.OutputVolts)]
        );
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
