using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Diagnosis.Priors;

/// <summary>
/// How much likelier parts that wear have failed in a unit of known age than in one of the age that the rates are taken for. A life halves
/// with every 10 K (Illinois Capacitor, Rubycon), so that years in a hot unit count for more.
/// </summary>
internal sealed class Ageing(Sheet sheet)
{
    /// <summary>Years that rates.csv has in mind where it raises a rate for age (common practice, no source).</summary>
    private const double UsualYears = 30;

    /// <summary>Kelvin that halve a life.</summary>
    private const double HalvingKelvin = 10;

    /// <summary>Degrees Celsius around the parts of a unit with valves and of one without (common practice, no source).</summary>
    private const double AmongValves = 55;
    private const double AmongTransistors = 45;
    private const double Usual = 50;

    /// <summary>
    /// The hazard of wear goes with the square of the years (a Weibull slope of three: common practice, no source); half of its logarithm is
    /// believed, as of every ratio between families.
    /// </summary>
    private const double Exponent = 2 * 0.5;
    private const double Least = 0.35;
    private const double Most = 3;

    private readonly double celsius = sheet.Parts.Any(p => p is ValvePart) ? AmongValves : AmongTransistors;

    /// <summary>Factor on the mass of a fault, 0.35 to 3; 1 when the age is not known (NaN) or the part does not wear.</summary>
    public double Of(PartKind kind, FailureMode mode, double years) =>
        double.IsNaN(years) || !Wears(kind, mode)
            ? 1
            : Math.Clamp(Math.Pow(years * Math.Pow(2, (celsius - Usual) / HalvingKelvin) / UsualYears, Exponent), Least, Most);

    private static bool Wears(PartKind kind, FailureMode mode) =>
        (kind, mode) switch
        {
            (PartKind.ElectrolyticCapacitor, FailureMode.DriedOut or FailureMode.Leaky or FailureMode.Short) => true,
            (PartKind.PaperCapacitor, FailureMode.Leaky or FailureMode.Short) => true,
            (PartKind.CarbonResistor, FailureMode.Drifted) => true,
            (PartKind.Contact or PartKind.Pot, FailureMode.BadContact) => true,
            _ => false,
        };
}
