using System.Numerics;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Thermal loop gain of push-pull pairs of bipolar transistors: a kelvin lowers the base-emitter volts by 2 mV, which raises the collector
/// current as far as emitter resistors and bias let it, which heats the junction by volts times thermal resistance.
/// </summary>
internal sealed class ThermalQuestion(AskedWorld asked)
{
    /// <summary>Fall of the base-emitter volts, V/K (common practice, no source).</summary>
    private const double VoltsPerKelvin = 2e-3;

    /// <summary>Junction at its rated limit above the case that the rating holds at, K (150 less 25, common practice).</summary>
    private const double RatedRise = 125;

    /// <summary>Washer and heatsink of one device, K/W (stated: no drawing gives it).</summary>
    private const double SinkOhms = 2;

    public IReadOnlyList<ThermalLoop> Ask()
    {
        var partners = new PushPull(asked).Partners();
        List<ThermalLoop> loops = [];
        foreach (var (a, b) in partners.Where(p => p.Key < p.Value))
        {
            if (Device(a) is { } first && Device(b) is { } second)
            {
                loops.Add(Loop([(a, first), (b, second)]));
            }
        }

        return [.. loops.OrderByDescending(l => l.JunctionGain)];
    }

    /// <summary>The transistor of an element, when it is one with a rating.</summary>
    private TransistorPart? Device(int element) =>
        asked.Circuit.Equations.Elements[element].Law is BjtLaw
        && asked.Circuit.Sheet.Parts.FirstOrDefault(p => p.Designator == asked.Parts.OfElement(element)) is TransistorPart part
        && part.Device.Limits.ContainsKey("watts")
            ? part
            : null;

    private ThermalLoop Loop((int Element, TransistorPart Part)[] pair)
    {
        var signal = new SmallSignalSolver(asked.Circuit.Equations);
        signal.Prepare(asked.State.Slots, asked.State.Mean, Balance.Rest);
        ElementAtRest[] at =
        [
            .. pair.Select(p => new ElementAtRest(
                asked.Circuit.Equations.Elements[p.Element],
                asked.State.Slots,
                asked.State.Mean
            )),
        ];
        double junction = 0,
            whole = 0;
        for (var heated = 0; heated < at.Length; heated++)
        {
            // Both halves warm together: what warms one is the current that either draws.
            var amps = at.Select((_, warm) => AmpsPerKelvin(signal, at[warm], at[heated], warm == heated)).Sum();
            var watts = Math.Abs(at[heated].Volts[0]) * Math.Abs(amps);
            var inside = RatedRise / pair[heated].Part.Device.Limits["watts"];
            junction = Math.Max(junction, watts * inside);
            whole = Math.Max(whole, watts * (inside + SinkOhms));
        }

        return new(
            [.. pair.Select(p => p.Part.Designator)],
            Math.Abs(at[0].Amps[0]),
            at.Sum(e => Math.Abs(e.Volts[0] * e.Amps[0])),
            junction,
            whole
        );
    }

    /// <summary>Change of the heated one's collector current, in its own direction, for one kelvin in the warm one.</summary>
    private static double AmpsPerKelvin(SmallSignalSolver signal, ElementAtRest warm, ElementAtRest heated, bool same)
    {
        var rows = heated.Element.Rows;
        var sign = heated.Constant((int)BjtLaw.Constant.Polarity);
        var warmSign = warm.Constant((int)BjtLaw.Constant.Polarity);

        // A kelvin is as good as 2 mV more between base and emitter.
        double[] pushed = [.. Enumerable.Range(0, 2).Select(p => warmSign * VoltsPerKelvin * warm.Slope(p, 1))];
        double amps = same ? pushed[0] : 0;
        for (var q = 0; q < 2; q++)
        {
            var adjoint = signal.Adjoint(rows[q], rows[^1]);
            var volts = 0.0;
            for (var p = 0; p < 2; p++)
            {
                volts -= pushed[p] * (At(adjoint, warm.Element.Rows[p]) - At(adjoint, warm.Element.Rows[^1]));
            }

            amps += heated.Slope(0, q) * volts;
        }

        return sign * amps;
    }

    private static double At(Complex[] v, int row) => row < 0 ? 0 : v[row].Real;
}
