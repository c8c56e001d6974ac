namespace Slowglow.Power.Overload;

/// <summary>What else may be wrong where a part has died.</summary>
/// <param name="Causes">Faults of other parts that overload it, worst first.</param>
/// <param name="SwitchOn">Of a fuse with reservoirs behind it: what switching on asks of it, or why there is no figure; null otherwise.</param>
public sealed record OverloadAnswer(IReadOnlyList<OverloadCause> Causes, SwitchOn? SwitchOn);
