using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>One story of what is wrong: no fault, a fault, a fault and the fuse it blew, or two faults.</summary>
/// <param name="Faults">Empty for the healthy unit; the cause first.</param>
/// <param name="Prior">Probability before any evidence.</param>
/// <param name="BlownFuse">Fuse that the cause blew, or null.</param>
/// <param name="Milder">Index of the next milder severity of the same fault (the healthy unit at the end of the ladder), or -1.</param>
/// <param name="Worse">Index of the next worse severity, or -1.</param>
internal sealed record Hypothesis(IReadOnlyList<Fault> Faults, double Prior, string? BlownFuse, int Milder, int Worse)
{
    public bool IsHealthy => Faults.Count == 0;

    /// <summary>Index of the fault without the fuse that it blew; null for every other story.</summary>
    public int? Cause { get; init; }

    /// <summary>Indices of the two single faults that are at work together; null for every other story.</summary>
    public (int First, int Second)? Members { get; init; }

    /// <summary>What one would replace: designator of the cause; empty for the healthy unit.</summary>
    public string Part => IsHealthy ? "" : Faults[0].Part;
}
