using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers;

/// <summary>Issues a credit note over all or part of an invoice of the job.</summary>
public sealed class CreditInvoice(JobLedger ledger)
{
    private const int ShortestReason = 3;

    /// <param name="wanted">Amounts to take back; null = all that is left.</param>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        int invoice,
        IReadOnlyList<CreditedAmount>? wanted,
        string reason,
        string? by = null,
        CancellationToken cancel = default
    ) => ledger.WriteAsync(jobNumber, by, job => DraftAsync(job, invoice, wanted, reason.Trim()), cancel);

    private static async Task<Draft> DraftAsync(JobAtHand job, int number, IReadOnlyList<CreditedAmount>? wanted, string reason)
    {
        var papers = await job
            .Database.Papers.Where(p => p.JobNumber == job.Job.Number)
            .Select(p => p.Paper)
            .ToListAsync(job.Cancel);
        var invoice = papers.FirstOrDefault(p => p.Kind == PaperKind.Invoice && p.Number == number);
        if (invoice is null)
        {
            return Draft.Refused(new Workshop.Objection($"This job has no invoice {number}.", "One of those listed."));
        }

        if (reason.Length < ShortestReason)
        {
            return Draft.Refused(
                new Workshop.Objection("The reason is missing.", "Why it is taken back: it is printed on the credit note.")
            );
        }

        var earlier = papers.Where(p => p.Credits == number).ToList();
        var left = Crediting.Left(invoice.Priced, earlier);
        wanted = [.. (wanted ?? [.. left.Select((l, i) => new CreditedAmount(i, l))]).Where(w => w.Amount != 0)];
        var wrong = Crediting.Look(invoice.Priced, earlier, wanted);
        return wrong.Count > 0
            ? Draft.Refused(wrong)
            : IssueInvoice.Issued(
                invoice with
                {
                    Kind = PaperKind.CreditNote,
                    Number = await IssueInvoice.NextAsync(job, PaperKind.CreditNote),
                    Day = job.Today,
                    Priced = Crediting.Work(invoice.Priced, earlier, wanted, job.Today),
                    PaidBefore = [],
                    Terms = "",
                    Credits = number,
                    CreditedLines = [.. wanted.Select(w => w.Line)],
                    Reason = reason,
                }
            );
    }
}
