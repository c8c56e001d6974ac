namespace Slowglow.Power.Rewinding;

/// <summary>Resistance of copper. Resistivity: IEC 60028; temperature coefficient: common practice, no source.</summary>
public static class Copper
{
    /// <summary>Ohm metres at 20 degrees.</summary>
    public const double Resistivity = 1.724e-8;

    /// <summary>Change of resistance per kelvin, over that at 20 degrees.</summary>
    public const double Coefficient = 0.00393;

    /// <summary>Ohms of a wire at a temperature.</summary>
    /// <param name="metres">Length, &gt;= 0.</param>
    /// <param name="squareMillimetres">Section, &gt; 0.</param>
    /// <param name="celsius">Temperature of the copper.</param>
    public static double Ohms(double metres, double squareMillimetres, double celsius = 20) =>
        Resistivity * metres / (squareMillimetres * 1e-6) * Hotter(celsius);

    /// <summary>Resistance at a temperature over that at 20 degrees.</summary>
    public static double Hotter(double celsius) => 1 + (Coefficient * (celsius - 20));
}
