namespace Slowglow.Bench.Rehearsals;

/// <summary>How faults are drawn.</summary>
public enum FaultDraw
{
    /// <summary>As often as the program itself holds them likely: what a shop would see.</summary>
    Priors,

    /// <summary>Every part as often as every other, then every fault of it.</summary>
    Uniform,
}
