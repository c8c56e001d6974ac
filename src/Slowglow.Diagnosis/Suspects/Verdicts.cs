using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Puts each reading beside the healthy unit.</summary>
internal static class Verdicts
{
    private const double Expected = 2;
    private const double Far = 5;

    /// <summary>In the order the readings were given.</summary>
    public static IReadOnlyList<ReadingVerdict> Of(Posterior posterior)
    {
        var verdicts = new List<(Reading Reading, ReadingVerdict Verdict)>();
        for (var i = 0; i < posterior.Readings.Count; i++)
        {
            var column = posterior.Readings.Column(i);
            verdicts.Add((posterior.Readings[i], Of(posterior.Readings[i], column.Block.Alone(0, column.Index))));
        }
        return
        [
            .. posterior.Sifted.All.Select(r =>
                verdicts.FirstOrDefault(v => ReferenceEquals(v.Reading, r)).Verdict ?? Unweighed(posterior, r)
            ),
        ];
    }

    private static ReadingVerdict Unweighed(Posterior posterior, Reading reading) =>
        new(
            reading,
            double.NaN,
            double.NaN,
            double.NaN,
            double.NaN,
            reading.IsMistake ? "called a mistake"
                : posterior.Sifted.Aside.Contains(reading, ReferenceEqualityComparer.Instance) ? "in doubt, not weighed"
                : posterior.Looks.Chance(reading, 0) > 0.5 ? "as expected"
                : "does not belong"
        );

    private static ReadingVerdict Of(Reading reading, Prediction healthy)
    {
        var scale = Scale.Of(reading.Probe);
        if (!healthy.HasFigure)
        {
            return new(reading, double.NaN, double.NaN, double.NaN, double.NaN, WithoutFigure(reading, healthy.Kind));
        }
        var low = scale.From(healthy.Mean - Expected * healthy.Sd);
        var high = scale.From(healthy.Mean + Expected * healthy.Sd);
        var nominal = scale.From(healthy.Mean);
        if (reading.Said != MeterSaid.Value)
        {
            return new(reading, nominal, low, high, double.NaN, WordOf(reading, healthy));
        }
        var z = (scale.To(reading.Value) - healthy.Mean) / healthy.Sd;
        return new(reading, nominal, low, high, z, Word(z));
    }

    private static string Word(double z) =>
        Math.Abs(z) <= Expected ? "as expected"
        : z < -Far ? "far too low"
        : z > Far ? "far too high"
        : z < 0 ? "low"
        : "high";

    private static string WordOf(Reading reading, Prediction healthy) =>
        Explainer.Distance(reading, healthy, healthy) == 0
            ? "as expected"
            : reading.Said switch
            {
                MeterSaid.Overload or MeterSaid.Above => "far too high",
                MeterSaid.Below => "far too low",
                MeterSaid.NoSignal => "signal missing",
                MeterSaid.WeakSignal => "signal weak",
                _ => "does not belong",
            };

    private static string WithoutFigure(Reading reading, AnswerKind kind)
    {
        var open = kind is AnswerKind.Overload or AnswerKind.Floating && reading.Probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;
        return !open ? "cannot be said"
            : reading.Said == MeterSaid.Overload ? "as expected"
            : "far too low";
    }
}
