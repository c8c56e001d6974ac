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

    /// <summary>Ohms of a leak across a transistor's junction, or from its collector to its emitter.</summary>
    public static readonly double[] JunctionLeak = [10e3];

    /// <summary>Ohms of a leak over the insulation of a winding: to the core, or to its neighbour.</summary>
    public static readonly double[] InsulationLeak = [220e3, 10e3];

    /// <summary>Ohms of a dirty track between two pins of a valve socket.</summary>
    public static readonly double[] SocketLeak = [10e6, 1e6];

    /// <summary>Grid current of a gassy valve over its anode current.</summary>
    public static readonly double[] Gas = [3e-4, 3e-3];

    /// <summary>Ohms of a dirty contact, or of a wiper that hardly touches.</summary>
    public static readonly double[] Contact = [100, 10e3];

    /// <summary>Ohms of a dry joint in a wire, or of a fuse holder that has lost its spring: much more is as good as open.</summary>
    public static readonly double[] Joint = [100];

    /// <summary>The common mix-ups: a ring of the colour code, or a zero or two, too many or too few. What lies between is the next drawer.</summary>
    public static readonly double[] FittedOhms = [10, 100, 0.1, 0.01];

    /// <summary>The same of capacitors: one zero, for a hundredfold reservoir would be seen.</summary>
    public static readonly double[] FittedFarads = [10, 0.1];
}
