using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers;

/// <summary>Works out a quote at today's rates and takes it down as given.</summary>
public sealed class GiveQuote(JobLedger ledger)
{
    /// <param name="options">Name and lines of each way of doing it.</param>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        IReadOnlyList<(string Name, IReadOnlyList<ChargeLine> Lines)> options,
        string note,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            job =>
            {
                var rules = job.Rules;
                List<Objection> wrong = [.. options.SelectMany(o => LineCheck.Look(o.Lines, rules.Taxes, job.Today))];
                if (wrong.Count > 0)
                {
                    return Task.FromResult(new Draft(null, wrong));
                }

                var priced = options.Select(o => new QuoteOption(
                    o.Name.Trim(),
                    PriceList.Work(o.Lines, rules.Pricing, rules.Taxes, job.Today)
                ));
                var quote = new Quote([.. priced], job.Today, job.Today.AddDays(rules.QuoteDays), note.Trim());
                var entry = new QuoteGiven { What = quote };
                wrong.AddRange(EntryRules.Look(entry, job.Dealings, rules, job.Today));
                return Task.FromResult(wrong.Count > 0 ? new Draft(null, wrong) : new Draft(entry, []));
            },
            cancel
        );
}
