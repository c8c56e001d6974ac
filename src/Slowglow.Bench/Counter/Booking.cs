using Slowglow.Workshop.Money;
using Slowglow.Workshop.Photos;

namespace Slowglow.Bench.Counter;

/// <summary>What is filled in at the counter.</summary>
/// <param name="CustomerId">A customer known already; null for a new one.</param>
/// <param name="Promised">Day that was promised; null when none was.</param>
/// <param name="Photos">Taken at the counter; null when none were.</param>
/// <param name="Deposit">Paid at the counter; null when nothing was.</param>
public sealed record Booking(
    int? CustomerId,
    string Name,
    string Phone,
    string Mail,
    string Address,
    string Maker,
    string Model,
    string Serial,
    double MainsVolts,
    string Complaint,
    string Setting,
    string JustBefore,
    string Condition,
    string CameWith,
    Amount? Worth,
    Amount? BenchFee,
    Amount? Limit,
    Amount? Deposit,
    DateOnly? Promised,
    int? EarlierJob,
    IReadOnlyList<TakenPhoto>? Photos = null
);
