using System.Numerics;
using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>Margins of every loop, broken at the control of every element that amplifies.</summary>
internal static class StabilityQuestion
{
    private const double From = 0.1;
    private const double To = 20e6;
    private const int PerDecade = 16;

    /// <summary>Loops that never reach this gain cannot oscillate and are not worth a line.</summary>
    private const double LeastGain = 1;

    /// <summary>Phase margins as near as this are alike, degrees.</summary>
    private const double Alike = 10;

    /// <summary>Most worrying first: latching, then by phase margin; of those alike the one with the most gain.</summary>
    public static IReadOnlyList<StabilityMargin> Ask(AskedWorld asked, Fixtures.PathFixture? path)
    {
        ControlledSource[] sources = [.. ControlledSource.In(asked.Circuit.Equations, asked.State.Slots, asked.State.Mean)];
        var hertz = ResponseQuestion.Decades(From, To, PerDecade);
        var ratios = sources.Select(_ => new Complex[hertz.Length]).ToArray();
        var sweep = new SignalSweep(asked, path).WithRailsHeld();
        for (var k = 0; k < hertz.Length; k++)
        {
            sweep.At(hertz[k]);
            for (var s = 0; s < sources.Length; s++)
            {
                ratios[s][k] = sources[s].ReturnRatio(sweep.Signal, hertz[k]);
            }
        }

        // Positive at rest in a circuit that stands: the rest alone would not, and its margin cannot be read at this element.
        var stands = Balance.Stands(asked.Circuit.Equations, [.. sweep.Slots], asked.State.Mean);
        return
        [
            .. sources
                .Select((s, k) => (Source: s, Curve: new LoopCurve(hertz, ratios[k])))
                .Where(l => l.Curve.LargestGain > LeastGain && !(stands && l.Curve.Latches))
                .Select(l => Margin(asked, l.Source, l.Curve))
                .OrderByDescending(m => m.Latches)
                .ThenBy(m => double.IsNaN(m.PhaseMarginDegrees) ? 180 : Math.Round(m.PhaseMarginDegrees / Alike))
                .ThenByDescending(m => m.LoopGainDecibels),
        ];
    }

    private static StabilityMargin Margin(AskedWorld asked, ControlledSource source, LoopCurve curve)
    {
        var (difference, at) = curve.Smallest();
        var (degrees, crossover) = curve.PhaseMargin();
        return new(
            asked.Parts.OfElement(source.Element),
            asked.Parts.NameOfElement(source.Element),
            20 * Math.Log10(curve.LargestGain),
            difference,
            at,
            crossover,
            curve.Latches ? double.NaN : degrees,
            curve.Latches ? double.NaN : curve.GainMargin(),
            curve.Latches,
            !source.IsOpAmp
        );
    }
}
