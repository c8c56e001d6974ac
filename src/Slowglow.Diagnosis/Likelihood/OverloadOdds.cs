using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>How likely the meter's overload is under a hypothesis: an inequality, with a little room for a probe that made no contact.</summary>
internal static class OverloadOdds
{
    private const double Slip = 0.01;

    /// <summary>Where ordinary meters give up: ohms, and volts of the diode test (meter_facts.csv: 1.2 to 4 V).</summary>
    private const double OhmLimit = 40e6;
    private const double DiodeLimit = 2.2;

    /// <summary>Log probability of overload.</summary>
    public static double Log(Probe probe, Prediction prediction, Broad broad) =>
        prediction.Kind switch
        {
            AnswerKind.Overload or AnswerKind.Floating => Math.Log(1 - Slip),
            AnswerKind.Value => Math.Log(OfFigure(probe, prediction.Mean)),
            _ => broad.LogOverload(),
        };

    /// <summary>Probability of overload when a figure is predicted, on the probe's scale.</summary>
    public static double OfFigure(Probe probe, double scaled)
    {
        var value = Scale.Of(probe).From(scaled);
        var beyond = probe.Kind switch
        {
            ProbeKind.Ohm => Logistic((Math.Log(value + 1) - Math.Log(OhmLimit)) / 0.5),
            ProbeKind.Diode => Logistic((value - DiodeLimit) / 0.3),
            _ => 0,
        };
        return Slip + (1 - 2 * Slip) * beyond;
    }

    private static double Logistic(double x) => 1 / (1 + Math.Exp(-x));
}
