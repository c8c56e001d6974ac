using System.Globalization;
using Slowglow.Documents.Drawing;
using Slowglow.Documents.Pieces;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Shop;

namespace Slowglow.Documents;

/// <summary>What was wrong, what was done, and how it measured: the paper that goes home with the unit.</summary>
public static class ReportPdf
{
    /// <param name="pictures">Photographs printed with it, in their order.</param>
    public static byte[] Draw(
        Job job,
        JobDealings dealings,
        RepairReport report,
        Party customer,
        ShopRules rules,
        DateOnly day,
        IReadOnlyList<PaperPicture> pictures,
        byte[]? logo
    )
    {
        var number = job.Number.ToString(CultureInfo.InvariantCulture);
        using var flow = new Flow($"Report on job {number}", $"{rules.Party.Name}, report on job {number}", rules.Papers);
        Letterhead.Draw(
            flow,
            rules.Party,
            logo,
            "Repair report",
            day,
            customer,
            [("Job", number), ("Unit", job.Unit.Title), ("Serial", job.Unit.Serial)]
        );
        flow.Section("What you told us");
        flow.Text(job.Standing().Complaint, Face.Quote);
        Told(flow, "What was wrong", report.Found);
        Told(flow, "Why it sounded like that", report.Why);
        Told(flow, "What was done", report.Done);
        Work(flow, dealings);
        Readings(flow, report);
        if (dealings.SafetyTest is { } test)
        {
            Safety(flow, test);
        }

        Told(flow, "Good to know", report.Advice);
        Warranty(flow, dealings, report, day);
        PictureRows.Draw(flow, pictures);
        return flow.Finish();
    }

    private static void Told(Flow flow, string head, string text)
    {
        if (text.Length > 0)
        {
            flow.Section(head);
            flow.Text(text);
        }
    }

    private static void Work(Flow flow, JobDealings dealings)
    {
        if (dealings.Fitted.Count > 0)
        {
            flow.Space(6);
            flow.Text(
                "Parts: " + string.Join("; ", dealings.Fitted.Select(f => f.Quantity > 1 ? $"{f.Quantity} x {f.Part}" : f.Part))
            );
        }

        if (dealings.Hours.Sum(h => h.Minutes) is > 0 and var minutes)
        {
            flow.Text($"Time on the bench: {PaperWords.Time(minutes)}.");
        }
    }

    private static void Readings(Flow flow, RepairReport report)
    {
        if (report.Readings.Count > 0)
        {
            flow.Section("Readings");
            var belongs = report.Readings.Any(r => r.Belongs.Length > 0);
            Column[] columns = [new("Where", 34), new("Before", 18, true), new("After", 18, true)];
            flow.Table(
                belongs ? [.. columns, new("A healthy one", 30, true)] : columns,
                [.. report.Readings.Select(r => (IReadOnlyList<string>)[r.Where, Or(r.Before), Or(r.After), r.Belongs])]
            );
        }

        static string Or(string reading) => reading.Length > 0 ? reading : "not taken";
    }

    private static void Safety(Flow flow, SafetyTest test)
    {
        flow.Section($"Electrical safety test, class {test.Class}: {(test.Passed ? "passed" : "failed")}");
        flow.Table(
            [new("Test", 26), new("Measured", 15, true), new("Limit", 24, true), new("Limit from", 26), new("", 9, true)],
            [
                .. test.Figures.Select(f =>
                    (IReadOnlyList<string>)
                        [
                            f.Test,
                            Value(f.Value, f.Unit),
                            (f.IsLeast ? "at least " : "at most ") + Value(f.Limit, f.Unit),
                            f.Standard,
                            f.Passed ? "pass" : "fail",
                        ]
                ),
            ]
        );
        flow.Space(4);
        var calibrated = test.CalibratedUntil is { } until ? $", calibrated until {flow.Format.Day(until)}" : "";
        flow.Text($"Tested by {test.Who} on {flow.Format.Day(test.Day)} with {test.Instrument}{calibrated}.", Face.Small);
        flow.Text("The figures are the technician's; local codes and licensed practice come first.", Face.Small, Face.Faint);
    }

    private static void Warranty(Flow flow, JobDealings dealings, RepairReport report, DateOnly day)
    {
        var until = dealings.Handover?.WarrantyUntil ?? (report.WarrantyMonths > 0 ? day.AddMonths(report.WarrantyMonths) : null);
        if (until is { } last)
        {
            flow.Section("Warranty");
            var from = dealings.Handover is null ? " if collected today" : "";
            flow.Text($"On the work done: {report.WarrantyMonths} months, until {flow.Format.Day(last)}{from}.");
        }
    }

    private static string Value(double value, string unit) => value.ToString("0.###", CultureInfo.InvariantCulture) + " " + unit;
}
