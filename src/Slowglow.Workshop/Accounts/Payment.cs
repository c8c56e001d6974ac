using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Accounts;

/// <summary>Money that changed hands.</summary>
/// <param name="Amount">Above 0, in the shop's currency.</param>
public sealed record Payment(Amount Amount, PaidBy By, PaidFor For, DateOnly Day, string Note)
{
    private const decimal Most = 10_000_000;

    /// <summary>What keeps it from being taken down; empty when nothing does.</summary>
    public IReadOnlyList<Objection> Look(string shopCurrency) =>
        Amount.Figure is <= 0 or > Most
            ? [new($"An amount of {Amount} cannot be taken.", "Above 0. Money given back has a button of its own.")]
        : Amount.Currency != shopCurrency
            ?
            [
                new(
                    $"The shop's accounts are in {shopCurrency}.",
                    $"What it came to in {shopCurrency}, with the other currency in the note."
                ),
            ]
        : Amount.Rounded() != Amount ? [new($"{Amount.Figure} has more decimals than {shopCurrency} is paid in.", "Whole coins.")]
        : [];
}
