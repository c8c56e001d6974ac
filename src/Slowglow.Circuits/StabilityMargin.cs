namespace Slowglow.Circuits;

/// <summary>How far a feedback loop is from oscillating, with the loop broken at the control of one element.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Element">"U3 section 1", "V2 section 1", "Q7".</param>
/// <param name="LoopGainDecibels">Largest loop gain over frequency.</param>
/// <param name="SmallestReturnDifference">Smallest of |1 + loop gain|: 1 and above is calm, below a half peaks, 0 oscillates.</param>
/// <param name="AtHertz">Where it is smallest.</param>
/// <param name="CrossoverHertz">Where the loop gain falls through one, at the end with the smaller phase margin.</param>
/// <param name="PhaseMarginDegrees">There; below zero the loop oscillates.</param>
/// <param name="GainMarginDecibels">Room for more gain where the phase has turned over; NaN when it never does; below zero the loop oscillates.</param>
/// <param name="Latches">The feedback is positive at rest and above one: the part stands at one of two ends.</param>
/// <param name="IsBestCase">
/// True for valves and transistors, whose own capacitances the models leave out: the real margin is smaller.
/// </param>
public sealed record StabilityMargin(
    string Part,
    string Element,
    double LoopGainDecibels,
    double SmallestReturnDifference,
    double AtHertz,
    double CrossoverHertz,
    double PhaseMarginDegrees,
    double GainMarginDecibels,
    bool Latches,
    bool IsBestCase
);
