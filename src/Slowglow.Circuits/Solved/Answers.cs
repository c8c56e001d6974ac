using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Sheets.Readings;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Answers probes from a solved, powered world.</summary>
internal sealed class Answers(Circuit circuit)
{
    /// <summary>Above this a meter's own leakage decides what it shows: the net is held by nothing.</summary>
    public const double FloatingOhms = 200e6;

    /// <summary>Times by which two inlet currents differ that still come from the same loads.</summary>
    private const double MuchAlike = 2;

    /// <summary>A net this near to a reservoir is kept by it; beyond, leakages decide as well.</summary>
    private const double ReservoirOhms = 5e6;

    /// <param name="channel">Signal path that is driven; worlds are kept without it, because only levels depend on it.</param>
    /// <summary>A spread beyond this, and beyond the figure itself, is that of leakages.</summary>
    private const double LeakageVolts = 10;

    /// <param name="heard">What was worked out of this world's signals for other probes.</param>
    public Answer Of(WorldState world, string? channel, Probe probe, MeterClass meter, SmallSignals heard)
    {
        if (!world.Settled)
        {
            return Answer.None(AnswerKind.Unsettled);
        }

        if (world.Setup.PowerOff && probe.Kind is not (ProbeKind.Ohm or ProbeKind.Diode))
        {
            return new Answer(AnswerKind.Value, 0, new double[circuit.Parameters.Count]);
        }

        if (probe.IsInlet)
        {
            return Inlet(world);
        }

        if (!Row(probe.Red, out var red) || !Row(probe.Black, out var black))
        {
            return Answer.None(AnswerKind.Floating);
        }

        return probe.Kind switch
        {
            ProbeKind.Dc => Dc(world, red, black, meter),
            ProbeKind.Ac => Ac(world, red, black),
            ProbeKind.Level => Level(world, heard, channel, red, black, probe.Frequency),
            _ => Answer.None(AnswerKind.NotApplicable),
        };
    }

    public bool Row(string net, out int row) => circuit.Rows.TryGetValue(net, out row);

    private Answer Dc(WorldState world, int red, int black, MeterClass meter)
    {
        var ohms = world.OhmsBetween(red, black);
        if (ohms > ReservoirOhms && OnReservoir(world, red, black) is { } kept)
        {
            return Dc(world, red, black, Math.Min(kept, ohms), meter);
        }

        if (ohms > FloatingOhms)
        {
            return Answer.None(AnswerKind.Floating);
        }

        return Held(Dc(world, red, black, ohms, meter));
    }

    /// <summary>
    /// Ohms from a net without any load to the reservoir that keeps it: nothing draws from it, and the crest of the next cycle makes good
    /// what a meter takes. Null for a net that no reservoir keeps.
    /// </summary>
    private double? OnReservoir(WorldState world, int red, int black)
    {
        var rows = circuit.Fixtures.Reservoirs.SelectMany(r => new[] { (red, r, black), (black, r, red) });
        foreach (var (net, reservoir, other) in rows)
        {
            var ohms = net == reservoir ? 0 : world.OhmsBetween(net, reservoir);
            if (net >= 0 && ohms < ReservoirOhms && world.OhmsBetween(other, -1) < FloatingOhms)
            {
                return Math.Max(ohms, 0) + Math.Max(world.OhmsBetween(other, -1), 0);
            }
        }

        return null;
    }

    private static Answer Dc(WorldState world, int red, int black, double ohms, MeterClass meter)
    {
        var loading = meter.InputOhms / (meter.InputOhms + Math.Max(ohms, 0));
        var spread = Combine(world.MeanSpread, world.Unknowns, red, loading, black, -loading);
        return new Answer(AnswerKind.Value, loading * (world.MeanAt(red) - world.MeanAt(black)), spread);
    }

    private Answer Ac(WorldState world, int red, int black)
    {
        if (world.OhmsBetween(red, black) > FloatingOhms)
        {
            return Answer.None(AnswerKind.Floating);
        }

        var rms = world.RmsBetween(red, black);

        // Between two nets that both move (a winding) the volts go with the mains; what else moves them is small beside that.
        var spread = black < 0 ? Combine(world.RmsSpread, world.Unknowns, red, 1, -1, 0) : WithMains(rms);
        return Held(new Answer(AnswerKind.Value, rms, spread));
    }

    /// <summary>Between the pulses of its rectifier a winding is held by leakage alone: a figure that specimens decide wholly is none.</summary>
    private static Answer Held(Answer answer) =>
        answer.Sigma > LeakageVolts && answer.Sigma > Math.Abs(answer.Value) ? Answer.None(AnswerKind.Floating) : answer;

    private double[] WithMains(double value) => [.. circuit.Parameters.Select(p => p.Part == "mains" ? p.Sigma * value : 0)];

    private static double[] Combine(float[] table, int unknowns, int red, double redWeight, int black, double blackWeight)
    {
        if (table.Length == 0)
        {
            return [];
        }

        var spread = new double[table.Length / unknowns];
        for (var p = 0; p < spread.Length; p++)
        {
            var sum = red < 0 ? 0 : redWeight * table[(p * unknowns) + red];
            spread[p] = sum + (black < 0 ? 0 : blackWeight * table[(p * unknowns) + black]);
        }

        return spread;
    }

    /// <summary>
    /// Inlet current. A unit that draws much what the healthy one does spreads as that does; one that does not, with the mains volts alone, in proportion.
    /// </summary>
    private Answer Inlet(WorldState world)
    {
        if (!circuit.Fixtures.HasMains)
        {
            return Answer.None(AnswerKind.NotApplicable);
        }

        var amps = new WorldSolver(circuit).InletAmps(world);
        return world.Inlet is { } usual && Math.Abs(Math.Log(amps / usual.Amps)) < Math.Log(MuchAlike)
            ? new Answer(AnswerKind.Value, amps, Array.ConvertAll(usual.Share, s => s * amps))
            : new Answer(AnswerKind.Value, amps, WithMains(amps));
    }

    private Answer Level(WorldState world, SmallSignals heard, string? channel, int red, int black, double frequency)
    {
        var path = circuit.Fixtures.PathOf(channel);
        if (path is null)
        {
            return Answer.None(AnswerKind.NotApplicable);
        }

        if (heard.At(path, frequency) is not ({ } x, var signal))
        {
            return Answer.None(AnswerKind.Unsettled);
        }

        var volts = path.Path.LevelVolts * (At(x, red) - At(x, black));
        var adjoint = signal.Adjoint(red, black);
        return new Answer(
            AnswerKind.Value,
            volts.Magnitude,
            LevelSpread(world, signal, x, adjoint, frequency, path.Path.LevelVolts, volts)
        );
    }

    private static Complex At(Complex[] x, int row) => row < 0 ? 0 : x[row];

    /// <summary>First-order change of the magnitude for every parameter, the operating point that it moves included.</summary>
    private double[] LevelSpread(
        WorldState world,
        SmallSignalSolver signal,
        Complex[] x,
        Complex[] adjoint,
        double frequency,
        double scale,
        Complex volts
    )
    {
        var spread = new double[circuit.Parameters.Count];
        if (volts.Magnitude == 0)
        {
            return spread;
        }

        var toward = Complex.Conjugate(volts) / volts.Magnitude;
        for (var p = 0; p < spread.Length; p++)
        {
            Complex change = 0;
            foreach (var moved in circuit.Changes[p])
            {
                change += circuit.Owners.Effect(signal, moved, frequency, x, adjoint);
            }

            spread[p] = (scale * change * toward).Real;
        }

        PointSpread.Add(world, signal, x, adjoint, scale * toward, spread);
        return spread;
    }
}
