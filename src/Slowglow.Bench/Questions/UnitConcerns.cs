using Slowglow.Circuits;

namespace Slowglow.Bench.Questions;

/// <summary>What a whole unit stands, and what would make its figures mislead.</summary>
/// <param name="Windings">Currents of all windings.</param>
/// <param name="Ripple">Ripple currents of the capacitors that carry a milliampere and more, largest first.</param>
/// <param name="OverRatings">Parts over their ratings.</param>
/// <param name="OtherStates">States in which the unit can rest as well.</param>
/// <param name="Stands">False when the state that the figures hold for falls over by itself.</param>
/// <param name="ThermalLoops">Output pairs whose standing current heats itself.</param>
public sealed record UnitConcerns(
    IReadOnlyList<WindingCurrent> Windings,
    IReadOnlyList<CapacitorCurrent> Ripple,
    IReadOnlyList<OverRating> OverRatings,
    IReadOnlyList<OtherState> OtherStates,
    bool Stands,
    IReadOnlyList<ThermalLoop> ThermalLoops
);
