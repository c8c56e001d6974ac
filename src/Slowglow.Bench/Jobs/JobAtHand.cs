using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Jobs;

/// <summary>A job as it stands at the moment of writing.</summary>
internal sealed record JobAtHand(
    ShopDatabase Database,
    Job Job,
    JobDealings Dealings,
    ShopRules Rules,
    DateOnly Today,
    CancellationToken Cancel
);
