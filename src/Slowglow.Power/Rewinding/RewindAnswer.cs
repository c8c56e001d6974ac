namespace Slowglow.Power.Rewinding;

/// <summary>A transformer specified for a winder.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Duties">What each winding does in the circuit as drawn.</param>
/// <param name="Design">To be wound; misses a limit when <see cref="Refusal"/> says so.</param>
/// <param name="Refusal">Why it cannot be wound; null when it can.</param>
/// <param name="Larger">The smallest core on which it can be, where the wanted one is too small; null otherwise, or when none is.</param>
/// <param name="Rails">With the design put back into the circuit.</param>
/// <param name="Primary">Taps and straps, where several mains voltages were asked for.</param>
/// <param name="Tests">Flash tests.</param>
/// <param name="Notes">Leads, mounting, what the old one tells.</param>
public sealed record RewindAnswer(
    string Part,
    IReadOnlyList<WindingDuty> Duties,
    WoundDesign Design,
    string? Refusal,
    WoundDesign? Larger,
    IReadOnlyList<RailCheck> Rails,
    TappedPrimary? Primary,
    IReadOnlyList<FlashTest> Tests,
    IReadOnlyList<string> Notes
);
