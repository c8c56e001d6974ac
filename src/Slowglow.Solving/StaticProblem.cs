namespace Slowglow.Solving;

/// <summary>One world to be solved at rest.</summary>
public sealed class StaticProblem
{
    /// <summary>All slot values.</summary>
    public required double[] Slots { get; init; }

    /// <summary>Where to start, one entry for each unknown.</summary>
    public required double[] Start { get; init; }

    /// <summary>A settled relative to start from instead of <see cref="Start"/>; null for none.</summary>
    public RestReference? Relative { get; init; }

    /// <summary>Currents pushed into unknowns from outside (a meter's), amperes.</summary>
    public IReadOnlyList<(int Row, double Amps)> Pushed { get; init; } = [];

    /// <summary>The solution; the last iterate when it did not settle.</summary>
    public double[] Solution { get; set; } = [];
    public bool Settled { get; set; }

    /// <summary>Newton steps taken.</summary>
    public int Steps { get; set; }

    /// <summary>Port volts, currents and slopes after a first step taken outside the lanes; null where none was, and once the problem is done.</summary>
    internal (double[] Volts, double[] Currents, double[] Slopes)? Advanced { get; set; }
}
