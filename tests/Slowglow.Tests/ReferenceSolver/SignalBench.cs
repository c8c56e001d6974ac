using System.Numerics;
using Slowglow.Circuits;
using Slowglow.Circuits.Building;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// A world of ours as the reference has it while a signal is followed: no mains, the rectified rails fed at the means of our cycle, the
/// generator and the load of the sheet's first path connected.
/// </summary>
internal sealed class SignalBench
{
    private const double Hertz = 1000;
    private const int Steps = 200;

    /// <summary>Leaves the rail to its reservoir at every frequency that is asked for, as our small signals do.</summary>
    private const double FarHenries = 1e6;

    /// <summary>Holds the rail, as our large signals do.</summary>
    private const double HoldOhms = 1e-3;
    private readonly Circuit circuit;
    private readonly IReadOnlyList<Fault> faults;
    private readonly Dictionary<string, double> means;
    private readonly Dictionary<string, double> warmth;
    private readonly SignalPath path;

    public SignalBench(Worlds worlds, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        (circuit, this.faults) = (worlds.Circuit, faults);
        path = circuit.Sheet.Signals[0];
        var nets = circuit.Sheet.Nets.Names.Where(n => n != NetTable.Ground && circuit.Rows.ContainsKey(n)).ToList();
        var probes = nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc)).ToList();
        var answers = worlds.Ask(Setup.Default, [faults], probes, MeterClass.Handheld with { InputOhms = 1e15 }, cancel: cancel)[
            0
        ];
        means = nets.Zip(answers).Where(a => a.Second.HasValue).ToDictionary(a => a.First, a => a.Second.Value);
        warmth = HeaterWarmth.Of(worlds, [faults], cancel)[0];
    }

    /// <summary>Volts at the output for the sheet's level, three frequencies a decade from 20 Hz to 20 kHz.</summary>
    public double[] Response()
    {
        var (reference, output) = Connected(ReferenceRun.SmallSignal, $"dc 0 ac {path.LevelVolts:R}");
        return NgSpice.Run(reference.RestText(means), "ac dec 3 20 20000", [output])[output];
    }

    /// <summary>Frequencies of <see cref="Response"/>, hertz.</summary>
    public static double[] Frequencies { get; } = [.. Enumerable.Range(0, 10).Select(k => 20 * Math.Pow(10, k / 3.0))];

    /// <summary>Harmonics (first to tenth, volts rms) of the output after so many cycles of 1 kHz from rest.</summary>
    public double[] Harmonics(double generatorVolts, int cycles)
    {
        var (reference, output) = Connected(ReferenceRun.LargeSignal, $"sin(0 {Math.Sqrt(2) * generatorVolts:R} {Hertz:R})");
        var end = cycles / Hertz;
        var analysis = FormattableString.Invariant($"tran {1 / Hertz / Steps:R} {end:R} 0 {1 / Hertz / Steps:R}");
        var found = NgSpice.Run(reference.SignalText(means), analysis, ["time", output], 4 * Steps * cycles);
        var time = found["time"];
        return time[^1] < end * (1 - 1e-6)
            ? throw new InvalidOperationException($"The reference solver stopped at {time[^1]} s:\n{NgSpice.Tail()}")
            : [.. Enumerable.Range(1, 10).Select(h => Harmonic(time, found[output], end - (1 / Hertz), h))];
    }

    private (ReferenceCircuit Reference, string Output) Connected(ReferenceRun run, FormattableString generator)
    {
        var reference = new ReferenceCircuit(circuit.Sheet, Setup.Default, faults, warmth, run: run);
        var deck = reference.Deck;
        foreach (var net in RectifiedNets.Of(circuit.Sheet))
        {
            var feed = deck.Inner("HOLD", net);
            deck.Card($"vhold{deck.Node(net)} {feed} 0 dc {means[net]:R}");
            if (run == ReferenceRun.SmallSignal)
            {
                deck.Coil("hold" + deck.Node(net), feed, deck.Node(net), FarHenries);
            }
            else
            {
                deck.Resistor("hold" + deck.Node(net), feed, deck.Node(net), HoldOhms);
            }
        }

        var output = deck.Node(path.Out);
        deck.Card($"vgen {deck.Inner("BENCH", "generator")} 0 {FormattableString.Invariant(generator)}");
        deck.Resistor("gen", deck.Inner("BENCH", "generator"), deck.Node(path.In), Math.Max(path.SourceOhms, 1));
        if (double.IsFinite(path.LoadOhms) && path.LoadOhms > 0)
        {
            deck.Resistor("load", output, "0", path.LoadOhms);
        }

        return (reference, output);
    }

    /// <summary>By trapezoids over one cycle of uneven steps.</summary>
    private static double Harmonic(double[] time, double[] volts, double from, int order)
    {
        Complex sum = 0;
        for (var i = 1; i < time.Length; i++)
        {
            var before = Math.Max(time[i - 1], from);
            if (time[i] <= before)
            {
                continue;
            }

            var share = (before - time[i - 1]) / (time[i] - time[i - 1]);
            var first = volts[i - 1] + ((volts[i] - volts[i - 1]) * share);
            sum += (time[i] - before) / 2 * ((first * Turn(before)) + (volts[i] * Turn(time[i])));
        }

        return sum.Magnitude * Math.Sqrt(2) * Hertz;

        Complex Turn(double t) => Complex.FromPolarCoordinates(1, -2 * Math.PI * order * Hertz * t);
    }
}
