namespace Slowglow.Workshop.Pricing;

/// <summary>The tax rates that the shop has set. The program knows none of its own.</summary>
public sealed record TaxTable(IReadOnlyList<TaxRate> Rates)
{
    /// <summary>Names of all rates, in the order they were set.</summary>
    public IReadOnlyList<string> Names => [.. Rates.Select(r => r.Name).Distinct()];

    /// <summary>The rate of that name on a day; null when there is none, or none yet.</summary>
    public TaxRate? On(string name, DateOnly day) => Rates.Where(r => r.Name == name && r.From <= day).MaxBy(r => r.From);
}
