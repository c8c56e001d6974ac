namespace Slowglow.Circuits.Models.Capacitor;

/// <summary>What becomes of an electrolytic: dried out, or fitted the wrong way round.</summary>
internal static class ElectrolyteWear
{
    /// <summary>Of a good one: a milliohm, which is nothing beside its reactance.</summary>
    public const double GoodSiemens = 1e3;

    /// <summary>Loss tangent at 100 Hz of a good one (common practice, no source).</summary>
    private const double LossTangent = 0.15;
    private const double Hertz = 100;

    /// <summary>Ohms times rated charge (farads times volts) of a reversed one: leakage goes with the area of the foil.</summary>
    private const double ReversedOhmCoulombs = 0.3;

    /// <summary>Rated volts where the drawing gives none.</summary>
    private const double UsualVolts = 25;

    /// <summary>
    /// Ohms in series with what is left. Capacitance falls and the loss tangent rises together (Rubycon, technical notes for electrolytic
    /// capacitors); that the tangent goes with one over the capacitance left is common practice, no source.
    /// </summary>
    /// <param name="farads">As made.</param>
    /// <param name="left">Fraction of the capacitance left, above 0, at most 1.</param>
    public static double SeriesOhms(double farads, double left) => LossTangent / (left * left * 2 * Math.PI * Hertz * farads);

    /// <summary>
    /// Ohms of one whose oxide is on the wrong foil. It conducts from a volt or so; a plain resistance stands in for it: common practice,
    /// no source.
    /// </summary>
    public static double ReversedOhms(double farads, double ratedVolts) =>
        ReversedOhmCoulombs / (farads * (double.IsNaN(ratedVolts) ? UsualVolts : ratedVolts));
}
