using System.Globalization;
using Slowglow.Documents.Drawing;
using Slowglow.Documents.Pieces;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Papers;

namespace Slowglow.Documents;

/// <summary>An invoice or a credit note on A4. Drawn from the paper as issued, so that it looks the same whenever it is printed.</summary>
public static class InvoicePdf
{
    public static byte[] Draw(Paper paper, byte[]? logo)
    {
        var title = paper.Kind == PaperKind.Invoice ? "Invoice" : "Credit note";
        var number = paper.Number.ToString(CultureInfo.InvariantCulture);
        using var flow = new Flow(
            $"{title} {number}",
            $"{paper.Shop.Name}, {title.ToLowerInvariant()} {number}",
            paper.Format ?? PaperFormat.Usual
        );
        Letterhead.Draw(
            flow,
            paper.Shop,
            logo,
            title,
            paper.Day,
            paper.Customer,
            [
                (paper.Kind == PaperKind.Invoice ? "Invoice no." : "Credit note no.", number),
                ("Job", paper.JobNumber.ToString(CultureInfo.InvariantCulture)),
                ("Unit", paper.Unit),
                ("Credits", paper.Credits is { } credits ? $"invoice {credits}" : ""),
            ]
        );
        flow.Space(10);
        LineTable.Draw(flow, paper.Priced);
        if (paper.Kind == PaperKind.Invoice)
        {
            Paid(flow, paper);
        }

        if (paper.Reason.Length > 0)
        {
            flow.Section("Why");
            flow.Text(paper.Reason);
        }

        if (paper.Terms.Length > 0)
        {
            flow.Space(18);
            flow.Text(paper.Terms, Face.Small, Face.Faint);
        }

        return flow.Finish();
    }

    private static void Paid(Flow flow, Paper paper)
    {
        var currency = paper.Priced.Rule.Currency;
        foreach (var payment in paper.PaidBefore)
        {
            var what = $"{PaperWords.For(payment.For)}, {PaperWords.By(payment.By)}, {flow.Format.Day(payment.Day)}";
            LineTable.Total(flow, "Paid: " + what, -payment.Amount.Figure, currency, false);
        }

        if (paper.PaidBefore.Count > 0)
        {
            LineTable.Total(
                flow,
                paper.ToPay.Figure >= 0 ? "To pay" : "Paid too much",
                Math.Abs(paper.ToPay.Figure),
                currency,
                true
            );
        }
    }
}
