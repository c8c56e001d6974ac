namespace Slowglow.Bench.Writing;

/// <summary>What the text comes to as it stands.</summary>
/// <param name="Usable">Nothing stops it from being solved.</param>
/// <param name="Checklist">What a diagnosis needs; empty while nothing can be read.</param>
/// <param name="Nets">Names of nets in use, as they are written.</param>
public sealed record TypedSheet(
    bool Usable,
    string? Unit,
    IReadOnlyList<TypedFinding> Findings,
    IReadOnlyList<string> Nets,
    IReadOnlyList<TypedPart> Parts,
    IReadOnlyList<StillMissing> Checklist
);
