using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Accounts;

/// <summary>What stands between the shop and the customer of a job.</summary>
/// <param name="Invoiced">Sum of its invoices.</param>
/// <param name="Credited">Sum of its credit notes.</param>
/// <param name="Paid">All that came in, deposits too.</param>
/// <param name="Returned">All that was given back.</param>
public sealed record JobAccount(Amount Invoiced, Amount Credited, Amount Paid, Amount Returned)
{
    public static JobAccount Empty(string currency) =>
        new(Amount.Zero(currency), Amount.Zero(currency), Amount.Zero(currency), Amount.Zero(currency));

    /// <summary>Above 0: the customer owes it. Below: the shop does.</summary>
    public Amount Balance => Invoiced - Credited - Paid + Returned;
}
