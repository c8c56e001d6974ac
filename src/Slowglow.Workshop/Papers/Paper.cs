using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Workshop.Papers;

/// <summary>An invoice or a credit note as issued. It is never changed: an invoice is put right by a credit note.</summary>
/// <param name="Number">Counts from 1 within its kind, without gaps.</param>
/// <param name="Unit">Maker, model and serial.</param>
/// <param name="PaidBefore">Deposits and part payments that were in when it was issued.</param>
/// <param name="Credits">For a credit note: number of the invoice.</param>
/// <param name="CreditedLines">For a credit note: which line of the invoice each of its lines takes back, from 0.</param>
/// <param name="Reason">For a credit note: why.</param>
/// <param name="Format">How its days and figures are written; null on old papers: the usual way.</param>
public sealed record Paper(
    PaperKind Kind,
    int Number,
    int JobNumber,
    DateOnly Day,
    Party Shop,
    Party Customer,
    string Unit,
    Priced Priced,
    IReadOnlyList<Payment> PaidBefore,
    string Terms,
    int? Credits = null,
    IReadOnlyList<int>? CreditedLines = null,
    string Reason = "",
    PaperFormat? Format = null
)
{
    /// <summary>Of an invoice: what was still to pay when it was issued.</summary>
    public Amount ToPay => new(Priced.Gross - PaidBefore.Sum(p => p.Amount.Figure), Priced.Rule.Currency);
}
