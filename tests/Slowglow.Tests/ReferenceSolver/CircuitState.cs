namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Where a circuit stands at the start of a mains cycle: volts of its nodes, amperes in its coils.</summary>
internal sealed record CircuitState(IReadOnlyDictionary<string, double> NodeVolts, IReadOnlyDictionary<string, double> CoilAmps)
{
    /// <summary>Everything discharged.</summary>
    public static CircuitState Rest { get; } = new(new Dictionary<string, double>(), new Dictionary<string, double>());
}
