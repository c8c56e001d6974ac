using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// How likely a prediction makes what is no plain figure: overload, a bound, an unsteady reading, a tracer's note. Steps and floors are
/// common practice, no source.
/// </summary>
internal static class SaidOdds
{
    /// <summary>A slip of the probe, of the range switch, of the ear.</summary>
    private const double Slip = 0.003;
    private const double Steady = 0.1;

    /// <summary>A tracer that finds nothing where volts belong, or volts where nothing can be, is hardly ever mistaken.</summary>
    private const double Deaf = 3e-4;

    /// <summary>An unsteady figure is worth this share of itself.</summary>
    private const double Wander = 0.2;

    /// <summary>Decibels lost at which one in two ears calls a signal weak, and calls it none.</summary>
    private const double WeakDb = 9;
    private const double NoneDb = 28;

    /// <summary>Decibels in one unit of natural logarithm.</summary>
    private const double Neper = 8.686;

    /// <summary>Levels below this are not heard in a healthy unit either, volts.</summary>
    private const double Inaudible = 3e-4;

    public static double Log(Reading reading, Prediction prediction, Prediction healthy, Broad broad) =>
        reading.Said switch
        {
            MeterSaid.Above => Math.Log(Soft(1 - Below(reading, prediction, broad))),
            MeterSaid.Below => Math.Log(Soft(Below(reading, prediction, broad))),
            MeterSaid.Unstable => Unstable(reading, prediction, broad),
            MeterSaid.Signal or MeterSaid.WeakSignal or MeterSaid.NoSignal => Math.Log(Heard(reading, prediction, healthy)),
            _ => OverloadOdds.Log(reading.Probe, prediction, broad),
        };

    /// <summary>The same for one that does not know.</summary>
    public static double LogUnknown(Reading reading, Broad broad) =>
        reading.Said switch
        {
            MeterSaid.Above => Math.Log(Soft(1 - broad.Below(Scaled(reading)))),
            MeterSaid.Below => Math.Log(Soft(broad.Below(Scaled(reading)))),
            MeterSaid.Unstable => Math.Log(0.2) + (double.IsNaN(reading.Value) ? 0 : broad.LogDensity(Scaled(reading))),
            MeterSaid.Signal => Math.Log(0.6),
            MeterSaid.NoSignal or MeterSaid.WeakSignal => Math.Log(0.05),
            _ => broad.LogOverload(),
        };

    private static double Scaled(Reading reading) => Scale.Of(reading.Probe).To(reading.Value);

    /// <summary>Chance of a figure below the bound; what is open shows overload on ohms and next to nothing on volts.</summary>
    private static double Below(Reading reading, Prediction prediction, Broad broad)
    {
        var bound = Scaled(reading);
        if (prediction.HasFigure)
        {
            return StudentT.Cumulative((bound - prediction.Mean) / prediction.Sd);
        }
        if (prediction.Kind == AnswerKind.Unsettled)
        {
            return broad.Below(bound);
        }
        return reading.Probe.Kind is ProbeKind.Ohm or ProbeKind.Diode ? 0
            : bound > Scale.Of(reading.Probe).To(0) ? 1
            : 0;
    }

    private static double Unstable(Reading reading, Prediction prediction, Broad broad)
    {
        if (!prediction.HasFigure)
        {
            var open = Math.Log(prediction.Kind == AnswerKind.Unsettled ? 0.6 : 0.5);
            return double.IsNaN(reading.Value) ? open : open + broad.LogDensity(Scaled(reading));
        }
        if (double.IsNaN(reading.Value))
        {
            return Math.Log(Steady);
        }
        var scale = Scale.Of(reading.Probe);
        var wander = Wander * (Math.Abs(reading.Value) + 0.1) * scale.Slope(reading.Value);
        var sd = Math.Sqrt(prediction.Sd * prediction.Sd + wander * wander);
        return Math.Log(Steady) + StudentT.LogDensity((Scaled(reading) - prediction.Mean) / sd, sd);
    }

    private static double Heard(Reading reading, Prediction prediction, Prediction healthy)
    {
        if (
            prediction.Kind == AnswerKind.Unsettled
            || !healthy.HasFigure
            || Scale.Of(reading.Probe).From(healthy.Mean) < Inaudible
        )
        {
            return 0.4;
        }
        var lost = prediction.HasFigure ? Neper * (healthy.Mean - prediction.Mean) : 80;
        var (weak, none) = (SoftStep.At(lost, WeakDb, 2.5), SoftStep.At(lost, NoneDb, 4));
        return reading.Said switch
        {
            MeterSaid.Signal => Ear(1 - Math.Max(none, 0.8 * weak)),
            MeterSaid.WeakSignal => Ear(weak * (1 - none)),
            _ => Ear(none),
        };
    }

    private static double Ear(double chance) => Deaf + (1 - 2 * Deaf) * chance;

    private static double Soft(double chance) => Slip + (1 - 2 * Slip) * chance;
}
