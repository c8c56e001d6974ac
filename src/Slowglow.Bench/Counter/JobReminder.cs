using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Counter;

/// <param name="Card">The job.</param>
/// <param name="Due">Who is to be reminded of what.</param>
public sealed record JobReminder(BoardCard Card, DueReminder Due);
