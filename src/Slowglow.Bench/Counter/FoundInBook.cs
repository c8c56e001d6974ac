using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Counter;

/// <summary>What the search box found.</summary>
/// <param name="Customers">Best first, a few.</param>
/// <param name="Jobs">Newest first, open ones before those gone home.</param>
public sealed record FoundInBook(IReadOnlyList<Customer> Customers, IReadOnlyList<BoardCard> Jobs);
