using System.Globalization;
using Slowglow.Documents.Drawing;
using Slowglow.Documents.Pieces;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;

namespace Slowglow.Documents;

/// <summary>What the customer takes home from the counter.</summary>
public static class ReceiptPdf
{
    public static byte[] Draw(
        Job job,
        JobDealings dealings,
        Party customer,
        ShopRules rules,
        DateOnly booked,
        DateOnly? promised,
        byte[]? logo
    )
    {
        var number = job.Number.ToString(CultureInfo.InvariantCulture);
        using var flow = new Flow($"Receipt for job {number}", $"{rules.Party.Name}, receipt for job {number}", rules.Papers);
        Letterhead.Draw(
            flow,
            rules.Party,
            logo,
            "Receipt",
            booked,
            customer,
            [("Job", number), ("Promised", promised is { } day ? flow.Format.Day(day) : "no date")]
        );
        flow.Section("Left with us");
        var notes = dealings.Notes;
        Letterhead.Facts(
            flow,
            [
                ("Unit", job.Unit.Title),
                ("Serial", job.Unit.Serial.Length > 0 ? job.Unit.Serial : "none to read"),
                ("Strapped for", string.Create(CultureInfo.InvariantCulture, $"{job.Unit.MainsVolts:0} V")),
                ("Came with", notes?.CameWith ?? ""),
                ("Condition", notes?.Condition ?? ""),
            ],
            0
        );
        flow.Section("What you told us");
        flow.Text(job.Standing().Complaint, Face.Quote);
        Letterhead.Facts(flow, [("Shows on", notes?.Setting ?? ""), ("Just before", notes?.JustBefore ?? "")], 0);
        flow.Section("Agreed");
        Letterhead.Facts(
            flow,
            [
                ("Bench fee", notes?.BenchFee is { } fee ? flow.Format.Say(fee) : ""),
                ("Call above", dealings.Limit(job.Limit) is { } limit ? flow.Format.Say(limit) : "no limit"),
                ("Paid", flow.Format.Say(dealings.Account(rules.Currency).Paid)),
            ],
            0
        );
        flow.Space(16);
        flow.Text(rules.CounterTerms, Face.Small, Face.Faint);
        return flow.Finish();
    }
}
