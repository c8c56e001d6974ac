namespace Slowglow.Circuits;

/// <summary>Whether the standing current of an output pair feeds its own heating. Bias taken from a transistor on the same heatsink works against it and is not counted.</summary>
/// <param name="Parts">The pair.</param>
/// <param name="StandingAmps">Standing current of the first.</param>
/// <param name="Watts">Standing dissipation of both together.</param>
/// <param name="JunctionGain">Thermal loop gain with the case held cool: at one and above the junctions run away on any heatsink.</param>
/// <param name="WholeGain">The same with heatsink (2 K/W, stated): at one and above the stage runs away unless its bias follows the heatsink.</param>
public sealed record ThermalLoop(
    IReadOnlyList<string> Parts,
    double StandingAmps,
    double Watts,
    double JunctionGain,
    double WholeGain
)
{
    /// <summary>Nothing that the bias does can hold it.</summary>
    public bool RunsAway => JunctionGain >= 1;

    /// <summary>It is held by its bias following the heatsink, or not at all.</summary>
    public bool NeedsTracking => WholeGain >= 1;
}
