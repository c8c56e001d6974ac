namespace Slowglow.Circuits;

/// <summary>What a part stands in a world.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Watts">Mean dissipation.</param>
/// <param name="WattsRatio">Over rated watts (for a valve: of the worst section over its anode limit); NaN when no rating is known.</param>
/// <param name="Volts">Largest volts across it in the cycle.</param>
/// <param name="VoltsRatio">Over rated volts; NaN when no rating is known.</param>
/// <param name="AmpsRms">Rms current; for a fuse its ratio to the rating is the one of interest.</param>
/// <param name="AmpsRatio">Over rated amperes; NaN when no rating is known.</param>
public sealed record PartStress(
    string Part,
    double Watts,
    double WattsRatio,
    double Volts,
    double VoltsRatio,
    double AmpsRms,
    double AmpsRatio
);
