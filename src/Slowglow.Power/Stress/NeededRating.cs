using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;

namespace Slowglow.Power.Stress;

/// <summary>Ratings to fit, from the sizes sold.</summary>
public static class NeededRating
{
    /// <summary>Air around parts in a closed unit, degrees (common practice, no source).</summary>
    private const double Air = 85;

    /// <summary>A resistor runs at half of what it could take there (common practice, no source).</summary>
    private const double Half = 2;

    /// <summary>Share of rated watts that a resistor takes in air of a temperature: a line from 70 degrees down (reference/resistor_derating.csv).</summary>
    public static double Share(bool wirewound, double celsius)
    {
        const double Full = 70;
        var end = wirewound ? 275 : 155;
        return Math.Clamp((end - celsius) / (end - Full), 0, 1);
    }

    /// <summary>Watts to order for a resistor that turns so many into heat.</summary>
    public static double Watts(ResistorPart part, double watts) =>
        StandardSizes.WattsFor(Half * watts / Share(part.Style == ResistorStyle.Wirewound, Air));

    /// <summary>
    /// Volts to order for a capacitor: direct volts and the crest of the ripple together stay within the rating
    /// (reference/capacitor_voltage_rules.csv).
    /// </summary>
    public static double Volts(CapacitorPart part, double volts) =>
        part.Style is CapacitorStyle.Electrolytic or CapacitorStyle.Bipolar or CapacitorStyle.Tantalum
            ? StandardSizes.ElectrolyticVoltsFor(volts)
            : StandardSizes.FilmVoltsFor(volts);

    internal static double For(Part part, string unit, double value) =>
        (part, unit) switch
        {
            (ResistorPart r, "W") => Watts(r, value),
            (CapacitorPart c, "V") => Volts(c, value),
            _ => double.NaN,
        };
}
