using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Bench.Writing;

/// <summary>
/// Lays a new version of the sheet beside the job. What was there before stays in the library and in the timeline; a text that was typed over
/// an older version than the newest is refused, unless the person has been told and says so.
/// </summary>
public sealed class SaveSheet(IDbContextFactory<ShopDatabase> shop, JobLedger ledger, TimeProvider clock)
{
    /// <summary>Characters. A sheet of five hundred parts has a tenth of it.</summary>
    public const int Longest = 400_000;

    /// <param name="basedOn">Number of the sheet that the text was typed over; null = there was none.</param>
    /// <param name="overNewer">True when the person knows that a newer version is there, and wants this one to follow it.</param>
    /// <returns>Number of the sheet now beside the job; findings when it was not stored. The same text again is no new version.</returns>
    public async Task<Parsed<SavedSheet>> RunAsync(
        int jobNumber,
        string text,
        int? basedOn,
        bool overNewer = false,
        CancellationToken cancel = default
    )
    {
        if (text.Length > Longest)
        {
            return new(null, Said.Wrong("That text is longer than any sheet.", $"At most {Longest} characters."));
        }

        try
        {
            return await StoreAsync(jobNumber, text, basedOn, overNewer, cancel);
        }
        catch (Exception e) when (e is DbUpdateException or DbException)
        {
            return new(
                null,
                Said.Wrong(
                    "The sheet could not be stored.",
                    "Is the disk full, or the database away? What was typed is still here."
                )
            );
        }
    }

    private async Task<Parsed<SavedSheet>> StoreAsync(
        int jobNumber,
        string text,
        int? basedOn,
        bool overNewer,
        CancellationToken cancel
    )
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Sheet)
            .SingleOrDefaultAsync(j => j.Number == jobNumber, cancel);
        if (job is null)
        {
            return new(null, Said.NoJob(jobNumber));
        }

        if (job.Sheet is { } now && now.Text == text)
        {
            return new(new(now.Id, false), []);
        }

        if (!overNewer && job.Sheet?.Id != basedOn)
        {
            return new(null, Said.Of([Newer]));
        }

        var sheet = new DrawnSheet
        {
            Title = job.Unit.Title,
            Text = text,
            AddedAt = clock.GetUtcNow(),
        };
        database.Sheets.Add(sheet);
        await database.SaveChangesAsync(cancel);
        var written = await ledger.WriteAsync(jobNumber, null, at => LayAsync(at, sheet, basedOn, overNewer), cancel);
        return written.Value is null ? new(null, written.Findings) : new(new(sheet.Id, true), []);
    }

    /// <summary>Looks once more at what lies beside the job: somebody may have been quicker.</summary>
    private static async Task<Draft> LayAsync(JobAtHand at, DrawnSheet sheet, int? basedOn, bool overNewer)
    {
        await at.Database.Entry(at.Job).Reference(j => j.Sheet).LoadAsync(at.Cancel);
        var follows = at.Job.Sheet?.Id;
        if (!overNewer && follows != basedOn)
        {
            return Draft.Refused(Newer);
        }

        at.Job.Sheet = await at.Database.Sheets.SingleAsync(s => s.Id == sheet.Id, at.Cancel);
        return new(new SheetAttached { What = new(sheet.Id, sheet.Title, follows) }, []);
    }

    private static Objection Newer { get; } =
        new(
            "A newer version of this sheet has been saved meanwhile, in another window or at another bench.",
            "Look at what differs, then save yours after it, or take the newer one. What you typed is kept."
        );
}
