using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Keeping;

/// <summary>Tables for an accountant: papers by tax rate, and money by day. Comma-separated, RFC 4180, UTF-8.</summary>
internal static class AccountTables
{
    public static async Task<IReadOnlyList<(string Name, string Text)>> WriteAsync(
        ShopDatabase database,
        TimeProvider clock,
        CancellationToken cancel
    )
    {
        var papers = (await database.Papers.AsNoTracking().OrderBy(p => p.Kind).ThenBy(p => p.Number).ToListAsync(cancel)).Select(
            p => p.Paper
        );
        var money = await database
            .Timeline.AsNoTracking()
            .Where(e => e is MoneyTaken || e is MoneyReturned || e is EntryStruck)
            .ToListAsync(cancel);
        return [("papers.csv", Papers(papers)), ("money.csv", Money(money))];
    }

    /// <summary>A row for each rate of each paper; credit notes with a minus.</summary>
    private static string Papers(IEnumerable<Paper> papers)
    {
        var rows = papers.SelectMany(p =>
            p.Priced.Taxes.Select(t =>
            {
                var sign = p.Kind == PaperKind.CreditNote ? -1 : 1;
                return new[]
                {
                    PaperKindWords.Say(p.Kind),
                    Figure(p.Number),
                    Day(p.Day),
                    Figure(p.JobNumber),
                    p.Customer.Name,
                    p.Credits is { } credits ? Figure(credits) : "",
                    t.Name,
                    Figure(t.Percent),
                    Figure(sign * t.Net),
                    Figure(sign * t.Tax),
                    Figure(sign * t.Gross),
                    p.Priced.Rule.Currency,
                };
            })
        );
        return Table(
            [
                "paper",
                "number",
                "day",
                "job",
                "customer",
                "credits invoice",
                "tax",
                "percent",
                "net",
                "tax amount",
                "gross",
                "currency",
            ],
            rows
        );
    }

    /// <summary>Every payment; what was struck out is left out.</summary>
    private static string Money(IReadOnlyList<TimelineEntry> entries)
    {
        var rows = entries
            .GroupBy(e => e.JobNumber)
            .SelectMany(g => Striking.Counting(g))
            .Select(e => (e.JobNumber, Payment: PaymentOf(e), Sign: e is MoneyReturned ? -1 : 1))
            .Where(e => e.Payment is not null)
            .OrderBy(e => e.Payment!.Day)
            .ThenBy(e => e.JobNumber)
            .Select(e =>
                new[]
                {
                    Day(e.Payment!.Day),
                    Figure(e.JobNumber),
                    Figure(e.Sign * e.Payment.Amount.Figure),
                    e.Payment.Amount.Currency,
                    e.Payment.By.ToString().ToLowerInvariant(),
                    e.Payment.For.ToString().ToLowerInvariant(),
                    e.Payment.Note,
                }
            );
        return Table(["day", "job", "amount", "currency", "by", "for", "note"], rows);
    }

    private static Payment? PaymentOf(TimelineEntry entry) =>
        entry switch
        {
            MoneyTaken taken => taken.What,
            MoneyReturned returned => returned.What,
            _ => null,
        };

    private static string Table(string[] head, IEnumerable<string[]> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows.Prepend(head))
        {
            text.AppendJoin(',', row.Select(Cell)).Append("\r\n");
        }

        return text.ToString();
    }

    /// <summary>A name that begins like a formula is set off with a quote mark, so that no spreadsheet runs it.</summary>
    private static string Cell(string text)
    {
        var safe =
            text.Length > 0 && text[0] is '=' or '+' or '@' or '\t'
            || (text.StartsWith('-') && !decimal.TryParse(text, CultureInfo.InvariantCulture, out _))
                ? "'" + text
                : text;
        return safe.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    private static string Figure(decimal figure) => figure.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
