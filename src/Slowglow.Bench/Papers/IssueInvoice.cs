using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage.Records;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers;

/// <summary>Issues an invoice: the next number, today's rates, what has been paid so far. It cannot be changed afterwards.</summary>
public sealed class IssueInvoice(JobLedger ledger)
{
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        IReadOnlyList<ChargeLine> lines,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            async job =>
            {
                var wrong = LineCheck.Look(lines, job.Rules.Taxes, job.Today);
                return wrong.Count > 0 ? Draft.Refused(wrong) : await DraftAsync(job, lines);
            },
            cancel
        );

    /// <summary>The next number of a kind. Two that take it at once cannot both be stored: the later one is drafted anew.</summary>
    internal static async Task<int> NextAsync(JobAtHand job, PaperKind kind) =>
        (await job.Database.Papers.Where(p => p.Kind == kind).MaxAsync(p => (int?)p.Number, job.Cancel) ?? 0) + 1;

    /// <summary>What is kept of a paper, and what the timeline says of it.</summary>
    internal static Draft Issued(Paper paper) =>
        new(
            new PaperIssued { What = new(paper.Kind, paper.Number, paper.Priced.Total, paper.Credits) },
            [],
            new KeptPaper
            {
                Kind = paper.Kind,
                Number = paper.Number,
                JobNumber = paper.JobNumber,
                Day = paper.Day.DayNumber,
                Paper = paper,
            }
        );

    private static async Task<Draft> DraftAsync(JobAtHand job, IReadOnlyList<ChargeLine> lines)
    {
        var unit = job.Job.Unit;
        return Issued(
            new(
                PaperKind.Invoice,
                await NextAsync(job, PaperKind.Invoice),
                job.Job.Number,
                job.Today,
                job.Rules.Party,
                CustomerParty.Of(job.Job.Customer),
                unit.Serial.Length > 0 ? $"{unit.Title}, serial {unit.Serial}" : unit.Title,
                PriceList.Work(lines, job.Rules.Pricing, job.Rules.Taxes, job.Today),
                PaidBefore(job),
                job.Rules.InvoiceTerms,
                Format: job.Rules.Papers
            )
        );
    }

    /// <summary>Payments that no earlier invoice has counted already.</summary>
    private static IReadOnlyList<Workshop.Accounts.Payment> PaidBefore(JobAtHand job) =>
        job.Dealings.Papers.Any(p => p.Kind == PaperKind.Invoice) ? [] : job.Dealings.Taken;
}
