using Slowglow.Circuits;
using Slowglow.Sheets.Parts;

namespace Slowglow.Bench.Rehearsals;

/// <summary>What is wrong with a hidden unit.</summary>
/// <param name="Kind">Whether the program could think of it.</param>
/// <param name="Faults">Faults of parts; a cause before the fuse it blew. Empty when a wrong part is all.</param>
/// <param name="Fitted">A part that takes the place of the one of its designator, or comes on top; null when none does.</param>
/// <param name="Cures">Designators, any of which is a right answer.</param>
/// <param name="Words">In the trade's words.</param>
public sealed record HiddenFault(
    HiddenKind Kind,
    IReadOnlyList<Fault> Faults,
    Part? Fitted,
    IReadOnlyList<string> Cures,
    string Words
);
