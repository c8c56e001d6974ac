namespace Slowglow.Solving;

/// <summary>
/// A settled periodic state that relatives of its world start from: its wave, what a period does to small changes of its states and,
/// when spread was asked for, how its means answer a steady current into any unknown. Immutable.
/// </summary>
public sealed class CycleReference
{
    internal CycleReference(CycleProblem problem, double[] wave, double[] approach)
    {
        (Wave, Approach) = (wave, approach);
        (Slots, Mean, States, End) = (problem.Slots, problem.Mean, problem.States, problem.End);
        Rms = CycleFigures.Rms(problem.Wave, problem.Mean);
    }

    public double[] Mean { get; }

    /// <summary>States at the zero crossing.</summary>
    public double[] States { get; }

    /// <summary>Unknowns at the end of the cycle.</summary>
    public double[] End { get; }

    /// <summary>
    /// Mean volts of every unknown for one steady ampere into another, the rest of the unit (rectifiers and all) left to answer:
    /// [driven * unknowns + unknown], ohms. Empty unless spread was asked for.
    /// </summary>
    public double[] Transfer { get; internal set; } = [];

    /// <summary>By parameter, the change of the watched branch's rms current as a share of that. Empty unless one was watched.</summary>
    public double[] WatchedShare { get; internal set; } = [];
    internal double[] Slots { get; }
    internal double[] Wave { get; }
    internal double[] Rms { get; }

    /// <summary>(I - M) inverse, row major: from what a period leaves of the states to the change of states that would leave nothing.</summary>
    internal double[] Approach { get; }

    /// <summary>As <see cref="CycleProblem.MeanSpread"/>.</summary>
    internal double[] MeanSpread { get; set; } = [];

    /// <summary>As <see cref="CycleProblem.RmsSpread"/>.</summary>
    internal float[] RmsSpread { get; set; } = [];

    /// <summary>Elements whose slopes change so much within the cycle that their mean says nothing: rectifiers.</summary>
    internal bool[] Switching { get; set; } = [];
    internal MeanPoint? Point { get; set; }
}
