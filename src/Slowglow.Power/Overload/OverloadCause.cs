namespace Slowglow.Power.Overload;

/// <summary>A fault of another part that overloads the one asked about.</summary>
/// <param name="Part">Designator of the culprit.</param>
/// <param name="Fault">"C1 short".</param>
/// <param name="What">"current in HT", "heat", "volts", "current".</param>
/// <param name="Unit">"A", "W" or "V".</param>
/// <param name="Value">What the part stands then.</param>
/// <param name="Healthy">What it stands in the healthy unit.</param>
/// <param name="Ratio">Over its rating; over what is healthy where it has none.</param>
/// <param name="Seconds">Until it is ruined, or a fuse has blown; infinite when it stands it; NaN when nothing can be said.</param>
/// <param name="ClearedBy">A fuse that opens sooner; null when none does.</param>
public sealed record OverloadCause(
    string Part,
    string Fault,
    string What,
    string Unit,
    double Value,
    double Healthy,
    double Ratio,
    double Seconds,
    string? ClearedBy
);
