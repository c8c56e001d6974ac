using Slowglow.Circuits;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>What every test point should read, and within what band.</summary>
public sealed class ExpectReadings(BenchUnit unit)
{
    /// <summary>Edges of the band, in standard deviations: about 95 in 100 healthy units read within.</summary>
    private const double Edge = 2;

    /// <summary>
    /// With the power on: dc for every net, ripple for rails, ac for windings, inlet current. With it off: ohms and diode tests.
    /// </summary>
    public IReadOnlyList<Expectation> Run(Setup setup, CancellationToken cancel = default) =>
        Run(setup, setup.PowerOff ? MeterPoints.Cold(unit.Sheet) : MeterPoints.Live(unit.Sheet, setup), cancel);

    /// <summary>The probes given, in the healthy world.</summary>
    public IReadOnlyList<Expectation> Run(Setup setup, IReadOnlyList<Probe> probes, CancellationToken cancel = default)
    {
        if (probes.Count == 0)
        {
            return [];
        }

        var meter = MeterClass.Handheld;
        var answers = unit.Worlds.Ask(
            setup,
            [
                [],
            ],
            probes,
            meter,
            cancel: cancel
        )[0];
        return [.. probes.Zip(answers, (probe, answer) => Expect(probe, answer, meter))];
    }

    private static Expectation Expect(Probe probe, Answer answer, MeterClass meter)
    {
        if (!answer.HasValue)
        {
            return new(probe, answer.Kind, double.NaN, double.NaN, double.NaN, probe.Unit);
        }

        var error = MeterError.Sigma(probe, answer.Value, meter);
        var edge = Edge * Math.Sqrt((answer.Sigma * answer.Sigma) + (error * error));
        var low = answer.Value - edge;
        var neverNegative = probe.Kind is ProbeKind.Ac or ProbeKind.Ohm or ProbeKind.Level;
        return new(probe, answer.Kind, answer.Value, neverNegative ? Math.Max(0, low) : low, answer.Value + edge, probe.Unit);
    }
}
