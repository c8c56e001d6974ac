namespace Slowglow.Solving;

/// <summary>One world to be solved to its periodic state.</summary>
public sealed class CycleProblem
{
    public required double[] Slots { get; init; }

    /// <summary>Guess of the unknowns at the start of the cycle.</summary>
    public required double[] Start { get; init; }

    /// <summary>Guess of the states at the start of the cycle, in the order of <see cref="Equations.StorageBranches"/>.</summary>
    public required double[] States { get; set; }

    /// <summary>A settled relative on the same equations and grid to start from; null for none.</summary>
    public CycleReference? Relative { get; init; }

    /// <summary>True: <see cref="Reference"/> is wanted, for relatives to start from.</summary>
    public bool AsReference { get; init; }

    /// <summary>A conductance branch whose current a reference is to know the spread of; -1 for none.</summary>
    public int Watched { get; init; } = -1;

    /// <summary>False: only the cycle; true: also how means and rms values move with every parameter.</summary>
    public bool WithSpread { get; init; }
    public bool Settled { get; set; }

    /// <summary>
    /// What the last cycle left of each state, of a world that found its way from a relative: a state that it moves slowly may yet have
    /// far to go. Empty otherwise.
    /// </summary>
    public double[] Left { get; internal set; } = [];

    /// <summary>Filled when asked for and settled.</summary>
    public CycleReference? Reference { get; internal set; }

    /// <summary>State that moved most over the last cycle when it did not settle: index into <see cref="Equations.StorageBranches"/>.</summary>
    public int Restless { get; set; } = -1;
    public int Cycles { get; set; }

    /// <summary>Mean of every unknown over the cycle.</summary>
    public double[] Mean { get; set; } = [];

    /// <summary>Every unknown at every step: [step * unknowns + unknown].</summary>
    public float[] Wave { get; set; } = [];

    /// <summary>Unknowns at the end of the cycle, as a start for relatives.</summary>
    public double[] End { get; set; } = [];

    /// <summary>Change of the mean for each parameter: [parameter * unknowns + unknown]. Empty unless asked for.</summary>
    public float[] MeanSpread { get; set; } = [];

    /// <summary>Change of the rms (mean removed) for each parameter, same shape.</summary>
    public float[] RmsSpread { get; set; } = [];
}
