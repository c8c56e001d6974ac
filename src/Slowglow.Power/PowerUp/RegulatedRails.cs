using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.PowerUp;

/// <summary>At which mains voltage every regulated rail comes alive, nothing else changed.</summary>
/// <param name="worlds">The unit.</param>
public sealed class RegulatedRails(Worlds worlds)
{
    /// <summary>Mains are tried in steps of a twentieth, from a fifth of nominal on.</summary>
    private const int Steps = 20;
    private const int Lowest = 4;

    /// <summary>A rail stands when it has this share of its volts.</summary>
    private const double Stands = 0.95;

    /// <summary>Less is no rail, volts.</summary>
    private const double LeastVolts = 0.5;

    private readonly Dictionary<int, double[]> solved = [];

    private Sheet Sheet => worlds.Circuit.Sheet;

    public IReadOnlyList<RailAlive> Ask(CancellationToken cancel = default)
    {
        string[] nets = [.. Sheet.Parts.OfType<RegulatorPart>().Select(r => r.NetOf("out")).OfType<string>().Distinct()];
        return [.. nets.Select((n, k) => new RailAlive(n, At(Steps, nets, cancel)[k], Least(nets, k, cancel)))];
    }

    /// <summary>Halves the range between mains at which it stands and mains at which it does not: below dropout a rail only falls.</summary>
    private double Least(string[] nets, int rail, CancellationToken cancel)
    {
        var full = Math.Abs(At(Steps, nets, cancel)[rail]);
        if (full <= LeastVolts)
        {
            return double.NaN;
        }

        var (below, stands) = (Lowest - 1, Steps);
        while (stands - below > 1)
        {
            var middle = (below + stands) / 2;
            (below, stands) = Math.Abs(At(middle, nets, cancel)[rail]) >= Stands * full ? (below, middle) : (middle, stands);
        }

        return stands * Sheet.Mains.Volts / Steps;
    }

    private double[] At(int step, string[] nets, CancellationToken cancel)
    {
        if (!solved.TryGetValue(step, out var volts))
        {
            var setup = Setup.Default with { Name = "slow", MainsVolts = step * Sheet.Mains.Volts / Steps };
            Probe[] probes = [.. nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc))];
            var answers = worlds.Ask(
                setup,
                [
                    [],
                ],
                probes,
                MeterClass.Handheld,
                cancel: cancel
            )[0];
            volts = [.. answers.Select(a => a.HasValue ? a.Value : 0)];
            solved[step] = volts;
        }

        return volts;
    }
}
