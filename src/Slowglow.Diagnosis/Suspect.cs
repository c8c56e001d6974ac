using Slowglow.Circuits;

namespace Slowglow.Diagnosis;

/// <summary>A part (or a group that no reading on offer can tell apart) with its probability.</summary>
/// <param name="Part">Designator of the likeliest part of the group: what one would replace or resolder.</param>
/// <param name="Fault">Its likeliest fault.</param>
/// <param name="Probability">Of the whole group, 0 to 1.</param>
/// <param name="Group">All designators of the group, likeliest first; one entry when the part stands alone.</param>
/// <param name="Modes">The faults weighed for the group with their probabilities, likeliest first.</param>
/// <param name="Explains">Sentences: what of the evidence this fault explains, from its computed world.</param>
/// <param name="Misfits">Sentences: what of the evidence it explains badly.</param>
/// <param name="Separates">What would tell the members of the group apart; empty for a single part.</param>
public sealed record Suspect(
    string Part,
    Fault Fault,
    double Probability,
    IReadOnlyList<string> Group,
    IReadOnlyList<FaultShare> Modes,
    IReadOnlyList<string> Explains,
    IReadOnlyList<string> Misfits,
    string Separates
)
{
    /// <summary>The other fault, when this suspect is two faults at once; the group then names both parts, and both are to be replaced.</summary>
    public Fault? Second { get; init; }

    /// <summary>"found in 2 of 5 past jobs on this sheet"; empty when past jobs know nothing of the part, or do not count.</summary>
    public string History { get; init; } = "";

    /// <summary>"R5 open", or "R5 open and C3 short".</summary>
    public string Words => Second is null ? Fault.ToString() : $"{Fault} and {Second}";
}
