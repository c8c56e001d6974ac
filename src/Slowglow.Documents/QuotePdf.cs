using System.Globalization;
using Slowglow.Documents.Drawing;
using Slowglow.Documents.Pieces;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Papers;

namespace Slowglow.Documents;

/// <summary>A quote with its options on A4.</summary>
public static class QuotePdf
{
    /// <param name="advice">What the customer ought to know before choosing, a sentence each.</param>
    public static byte[] Draw(
        Quote quote,
        Party shop,
        Party customer,
        int job,
        string unit,
        IReadOnlyList<string> advice,
        PaperFormat format,
        byte[]? logo
    )
    {
        using var flow = new Flow($"Quote for job {job}", $"{shop.Name}, quote for job {job}", format);
        Letterhead.Draw(
            flow,
            shop,
            logo,
            "Quote",
            quote.Day,
            customer,
            [
                ("Job", job.ToString(CultureInfo.InvariantCulture)),
                ("Unit", unit),
                ("Good until", flow.Format.Day(quote.ValidUntil)),
            ]
        );
        if (quote.Note.Length > 0)
        {
            flow.Space(6);
            flow.Text(quote.Note);
        }

        foreach (var option in quote.Options)
        {
            flow.Section(quote.Options.Count > 1 ? $"Option: {option.Name}" : option.Name);
            LineTable.Draw(flow, option.Priced);
            if (option.Priced.Weeks is { } weeks and > 0)
            {
                flow.Text($"Takes about {weeks} weeks from your answer.", Face.Small, Face.Faint);
            }
        }

        if (advice.Count > 0)
        {
            flow.Section("Before you choose");
            foreach (var sentence in advice)
            {
                flow.Text(sentence);
            }
        }

        flow.Space(18);
        flow.Text(
            quote.Options.Count > 1 ? "Please tell us which option you choose." : "Please tell us whether we may go on.",
            Face.Bold
        );
        return flow.Finish();
    }
}
