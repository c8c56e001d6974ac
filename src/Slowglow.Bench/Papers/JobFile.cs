using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Papers;

/// <summary>The paper side of a job.</summary>
/// <param name="Papers">Its invoices and credit notes, oldest first.</param>
/// <param name="SameUnit">Other jobs on this very unit, over all its owners, newest first.</param>
/// <param name="SameModel">Other jobs on the model, newest first, a few.</param>
public sealed record JobFile(
    Job Job,
    JobStanding Standing,
    JobDealings Dealings,
    ShopRules Rules,
    DateOnly Today,
    DateTimeOffset? Promised,
    IReadOnlyList<Paper> Papers,
    IReadOnlyList<PastVisit> SameUnit,
    IReadOnlyList<PastVisit> SameModel
)
{
    public JobAccount Account => Dealings.Account(Rules.Currency);

    /// <summary>The earlier job on this unit whose warranty still held when it came in; null when none.</summary>
    public PastVisit? UnderWarranty => SameUnit.FirstOrDefault(v => v.WarrantyUntil >= DateOnly.FromDateTime(Job.BookedIn.Date));
}
