namespace Slowglow.Power.Rewinding;

/// <summary>What is asked for.</summary>
public sealed record RewindRequest
{
    public MeasuredTransformer Measured { get; init; } = MeasuredTransformer.Nothing;

    public DesignLimits Limits { get; init; } = new();

    /// <summary>Mains voltages that the new primary shall be strapped for; empty = the primary as drawn.</summary>
    public IReadOnlyList<double> Mains { get; init; } = [];

    /// <summary>Core to wind on whatever it was wound on; null = the measured one, or the smallest that does.</summary>
    public CoreStack? Core { get; init; }
}
