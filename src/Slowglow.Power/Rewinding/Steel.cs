namespace Slowglow.Power.Rewinding;

/// <summary>What the laminations are made of.</summary>
/// <param name="Name">As it is ordered.</param>
/// <param name="DesignTesla">Flux density designed for at nominal mains (reference/transformer_rules.csv).</param>
/// <param name="MostTesla">Most at the highest mains; beyond it the magnetising current runs away (common practice, no source).</param>
/// <param name="WattsPerKilogram">At 1.5 T and 50 Hz; the grade's name says it.</param>
/// <param name="HalfField">Amperes per metre, crest, that the iron needs at 1.2 T (common practice, no source).</param>
public sealed record Steel(string Name, double DesignTesla, double MostTesla, double WattsPerKilogram, double HalfField)
{
    /// <summary>Each air joint of interleaved E and I, mm; two in the path (common practice, no source).</summary>
    private const double JointMillimetres = 0.02;
    private const double Permeability = 4e-7 * Math.PI;

    /// <summary>Loss rises with the square of flux and the 1.4 power of frequency (common practice, no source).</summary>
    private const double FrequencyPower = 1.4;

    public static Steel Ordinary { get; } = new("non-oriented M800-50A", 1.1, 1.35, 8.0, 300);

    public static Steel Good { get; } = new("non-oriented M530-50A", 1.2, 1.45, 5.3, 200);

    public static Steel Oriented { get; } = new("grain-oriented, 0.35 mm", 1.4, 1.65, 1.5, 60);

    public static IReadOnlyList<Steel> All { get; } = [Ordinary, Good, Oriented];

    /// <summary>Watts lost in a core.</summary>
    public double Watts(CoreStack core, double tesla, double hertz) =>
        WattsPerKilogram * core.Kilograms * Math.Pow(tesla / 1.5, 2) * Math.Pow(hertz / 50, FrequencyPower);

    /// <summary>Ampere-turns, rms, that magnetise a core: iron that steepens towards its limit, and the joints.</summary>
    public double AmpereTurns(CoreStack core, double tesla)
    {
        var steep = Math.Pow(tesla / 1.2, tesla > 1.2 ? 6 : 1);
        var iron = HalfField * steep * core.Lamination.IronPath * 1e-3;
        var joints = tesla / Permeability * 2 * JointMillimetres * 1e-3;
        return (iron + joints) / Math.Sqrt(2);
    }
}
