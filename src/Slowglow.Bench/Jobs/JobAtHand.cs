using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>A job as it stands at the moment of writing.</summary>
internal sealed record JobAtHand(
    ShopDatabase Database,
    Job Job,
    JobDealings Dealings,
    ShopRules Rules,
    DateOnly Today,
    CancellationToken Cancel
)
{
    /// <summary>The entry, or what the shop's rules have against it.</summary>
    public Draft Ask(TimelineEntry entry)
    {
        var wrong = EntryRules.Look(entry, Dealings, Rules, Today);
        return wrong.Count > 0 ? Draft.Refused(wrong) : new(entry, []);
    }
}
