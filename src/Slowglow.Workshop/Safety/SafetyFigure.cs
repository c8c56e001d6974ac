namespace Slowglow.Workshop.Safety;

/// <summary>A figure that was measured, with the limit it was held to.</summary>
/// <param name="Limit">As it applied to this lead; at least 0.</param>
/// <param name="Standard">Where the limit is from, with its edition; "technician's own" where none was known.</param>
public sealed record SafetyFigure(string Test, double Value, string Unit, bool IsLeast, double Limit, string Standard)
{
    public bool Passed => IsLeast ? Value >= Limit : Value <= Limit;
}
