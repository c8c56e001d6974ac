using Slowglow.Bench.Jobs;
using Slowglow.Bench.Photographs;
using Slowglow.Documents;
using Slowglow.Sheets;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;

namespace Slowglow.Bench.Papers;

/// <summary>Draws the papers of a job as PDF.</summary>
public sealed class PrintPaper(ReadJobFile read, ReadPhoto photos, TimeProvider clock)
{
    /// <param name="what">receipt, label, report, quote-11, invoice-3, credit-note-1.</param>
    /// <param name="address">Address of the job's page, for the code on the label.</param>
    public async Task<Parsed<PrintedPaper>> RunAsync(
        int jobNumber,
        string what,
        string address,
        CancellationToken cancel = default
    )
    {
        var file = await read.RunAsync(jobNumber, cancel);
        if (file.Value is null)
        {
            return new(null, file.Findings);
        }

        var pdf = what == "report" ? await ReportAsync(file.Value, cancel) : await DrawAsync(file.Value, what, address, cancel);
        return pdf is null
            ? new(null, Said.Wrong($"Job {jobNumber} has no {what}.", "Write it first; the job's papers list what there is."))
            : new(new($"job-{jobNumber}-{what}.pdf", pdf), []);
    }

    private async Task<byte[]?> ReportAsync(JobFile file, CancellationToken cancel)
    {
        if (file.Dealings.Report is not { } report)
        {
            return null;
        }

        List<PaperPicture> pictures = [];
        foreach (var photo in file.Dealings.Photos.Where(p => report.Photos?.Contains(p.File) == true))
        {
            if (await photos.RunAsync(photo.File, cancel) is { } kept)
            {
                pictures.Add(new(photo.Caption, kept.Content));
            }
        }

        var customer = CustomerParty.Of(file.Job.Customer);
        return ReportPdf.Draw(
            file.Job,
            file.Dealings,
            report,
            customer,
            file.Rules,
            file.Today,
            pictures,
            await LogoAsync(file.Rules.Party, cancel)
        );
    }

    /// <summary>Null when the shop has none.</summary>
    private async Task<byte[]?> LogoAsync(Party shop, CancellationToken cancel) =>
        shop.Logo.Length == 0 ? null : (await photos.RunAsync(shop.Logo, cancel))?.Content;

    private async Task<byte[]?> DrawAsync(JobFile file, string what, string address, CancellationToken cancel)
    {
        var (name, number) = Split(what);
        var logo = await LogoAsync(file.Rules.Party, cancel);
        var customer = CustomerParty.Of(file.Job.Customer);
        return name switch
        {
            "receipt" => ReceiptPdf.Draw(
                file.Job,
                file.Dealings,
                customer,
                file.Rules,
                ShopDay.Of(file.Job.BookedIn, clock),
                file.Promised is { } promised ? ShopDay.Of(promised, clock) : null,
                logo
            ),
            "label" => LabelPdf.Draw(file.Job, Label(file, address)),
            "quote" => Quote(file, customer, number, logo),
            "invoice" => await NumberedAsync(file, PaperKind.Invoice, number, cancel),
            "credit-note" => await NumberedAsync(file, PaperKind.CreditNote, number, cancel),
            _ => null,
        };
    }

    private static byte[]? Quote(JobFile file, Party customer, int sequence, byte[]? logo)
    {
        if (file.Dealings.Quotes.FirstOrDefault(q => q.Sequence == sequence) is not { } given)
        {
            return null;
        }

        var limit = file.Dealings.Limit(file.Job.Limit);
        var advice = QuoteAdvice.On(given.Quote, limit, file.Dealings.Notes?.Worth, file.Rules.WorthPercent);
        return QuotePdf.Draw(
            given.Quote,
            file.Rules.Party,
            customer,
            file.Job.Number,
            file.Job.Unit.Title,
            [.. advice],
            file.Rules.Papers,
            logo
        );
    }

    /// <summary>With the logo that the shop had when it was issued.</summary>
    private async Task<byte[]?> NumberedAsync(JobFile file, PaperKind kind, int number, CancellationToken cancel) =>
        file.Papers.FirstOrDefault(p => p.Kind == kind && p.Number == number) is { } paper
            ? InvoicePdf.Draw(paper, await LogoAsync(paper.Shop, cancel))
            : null;

    private static string Label(JobFile file, string asked) =>
        file.Rules.LabelAddress.Length == 0
            ? asked
            : FormattableString.Invariant($"{file.Rules.LabelAddress.TrimEnd('/')}/job/{file.Job.Number}");

    private static (string Name, int Number) Split(string what)
    {
        var dash = what.LastIndexOf('-');
        return dash > 0 && int.TryParse(what[(dash + 1)..], System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? (what[..dash], number)
            : (what, 0);
    }
}
