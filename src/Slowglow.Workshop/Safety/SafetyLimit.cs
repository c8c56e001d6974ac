namespace Slowglow.Workshop.Safety;

/// <summary>A limit of a test set.</summary>
/// <param name="Set">The set it belongs to.</param>
/// <param name="Class">Class of equipment: "I" or "II".</param>
/// <param name="Condition">For what, where the standard tells kinds of equipment apart; may be empty.</param>
/// <param name="IsLeast">True: the figure must not be below; false: not above.</param>
/// <param name="Value">Null when no source settles it: the technician enters the limit.</param>
/// <param name="Unit">"ohm", "megohm", "mA".</param>
/// <param name="Standard">Name and edition as the source gives them.</param>
/// <param name="Confidence">"two copies", "secondary", "memory": how well the figure is known here.</param>
public sealed record SafetyLimit(
    string Set,
    string Class,
    string Test,
    string Condition,
    bool IsLeast,
    double? Value,
    string Unit,
    string Standard,
    string Confidence
);
