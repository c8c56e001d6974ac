using Slowglow.Storage.Records;
using Slowglow.Workshop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>What is to be written, or why it cannot be.</summary>
/// <param name="Paper">A paper that is issued with the entry.</param>
/// <param name="Photo">A photograph that the entry speaks of.</param>
internal sealed record Draft(
    TimelineEntry? Entry,
    IReadOnlyList<Objection> Objections,
    KeptPaper? Paper = null,
    KeptPhoto? Photo = null
)
{
    public static Draft Refused(params IReadOnlyList<Objection> objections) => new(null, objections);
}
