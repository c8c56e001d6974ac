namespace Slowglow.Circuits.Models;

/// <summary>The grids that soft faults are weighed over.</summary>
internal static class Severities
{
    /// <summary>Factors on a resistance that has drifted up.</summary>
    public static readonly double[] Up = [1.5, 2.2, 3.3, 5, 8, 15];

    /// <summary>Factors on a value that has drifted down.</summary>
    public static readonly double[] Down = [0.6, 0.3];

    /// <summary>Ohms of a leak in a small capacitor.</summary>
    public static readonly double[] FilmLeak = [3.3e6, 470e3, 47e3];

    /// <summary>Ohms of a leak in an electrolytic.</summary>
    public static readonly double[] ElectrolyticLeak = [33e3, 3.3e3];

    /// <summary>Fraction of capacitance left in a dried-out electrolytic.</summary>
    public static readonly double[] Dried = [0.35, 0.12, 0.03];

    /// <summary>Fraction of emission left.</summary>
    public static readonly double[] Emission = [0.55, 0.25];
}
