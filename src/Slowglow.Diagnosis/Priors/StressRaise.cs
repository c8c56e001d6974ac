using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Priors;

/// <summary>How much the stress that the healthy world puts on a part raises its failure rate above that of a part at half its rating.</summary>
internal static class StressRaise
{
    private const double Least = 0.4;
    private const double Most = 8;

    /// <summary>Factor on the rate, 0.4 to 8; 1 when no rating is known.</summary>
    public static double Of(PartKind kind, PartStress? stress)
    {
        if (stress is null)
        {
            return 1;
        }
        var factor = ByWatts(kind, stress.WattsRatio) * ByVolts(kind, stress.VoltsRatio);
        return Math.Clamp(factor, Least, Most);
    }

    /// <summary>
    /// Resistors: MIL-HDBK-217F Notice 2 sec 9.1, exp(1.1 S), S watts over rating (wirewound 2.04). Semiconductors and valves run hotter with
    /// their watts; common practice, no source: e times the rate from cold to full rating. The law is held at twice the rating.
    /// </summary>
    private static double ByWatts(PartKind kind, double ratio)
    {
        if (double.IsNaN(ratio))
        {
            return 1;
        }
        var slope = kind switch
        {
            PartKind.FilmResistor or PartKind.CarbonResistor or PartKind.Pot => 1.1,
            PartKind.WirewoundResistor => 2.04,
            PartKind.Valve or PartKind.RectifierValve or PartKind.SmallTransistor or PartKind.PowerTransistor => 1.0,
            PartKind.Mosfet or PartKind.Jfet or PartKind.Regulator or PartKind.Zener => 1.0,
            _ => 0.0,
        };
        return Math.Exp(slope * (Math.Min(Math.Max(ratio, 0), 2) - 0.5));
    }

    /// <summary>MIL-HDBK-217F Notice 2: capacitors sec 10.1, (S/0.6)^n + 1; diodes sec 6.1, S^2.43; bipolar sec 6.3, exp(3.1 S).</summary>
    private static double ByVolts(PartKind kind, double ratio)
    {
        if (double.IsNaN(ratio))
        {
            return 1;
        }
        var s = Math.Clamp(ratio, 0, 2);
        return kind switch
        {
            PartKind.FilmCapacitor or PartKind.PaperCapacitor or PartKind.ElectrolyticCapacitor => OfCapacitor(s, 5),
            PartKind.CeramicCapacitor => OfCapacitor(s, 3),
            PartKind.MicaCapacitor => OfCapacitor(s, 10),
            PartKind.TantalumCapacitor => OfCapacitor(s, 17),
            PartKind.Diode or PartKind.SignalDiode => Math.Pow(Math.Max(s, 0.3) / 0.5, 2.43),
            PartKind.SmallTransistor or PartKind.PowerTransistor => Math.Exp(3.1 * (s - 0.5)),
            _ => 1,
        };
    }

    private static double OfCapacitor(double s, double exponent) =>
        (Math.Pow(s / 0.6, exponent) + 1) / (Math.Pow(0.5 / 0.6, exponent) + 1);
}
