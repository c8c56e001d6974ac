using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.People;
using Slowglow.Bench.Photographs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Bench.Counter;

/// <summary>Takes a unit in over the counter.</summary>
public sealed class BookIn(IDbContextFactory<ShopDatabase> shop, TimeProvider clock, JobNews news)
{
    private const int FirstNumber = 1001;
    private const int Attempts = 12;

    /// <summary>Number of the new job; findings when something is missing or cannot be. A sheet that the shop has of the same model is laid beside it.</summary>
    public async Task<Parsed<BookedJob>> RunAsync(Booking booking, string? by = null, CancellationToken cancel = default)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                var booked = await StoreAsync(booking, by, cancel);
                if (booked.Value is { Number: var number })
                {
                    news.Tell(number);
                }

                return booked;
            }
            catch (DbUpdateException) when (attempt < Attempts)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(Random.Shared.Next(5, 15 * attempt)), clock, cancel);
            }
            catch (Exception e) when (e is DbUpdateException or DbException)
            {
                return new(
                    null,
                    Said.Wrong(
                        "The booking could not be stored.",
                        "Is the disk full, or the database away? What was typed is still here."
                    )
                );
            }
        }
    }

    private async Task<Parsed<BookedJob>> StoreAsync(Booking booking, string? by, CancellationToken cancel)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var rules = await JobLedger.RulesAsync(database, cancel);
        if (Someone.Refuses(rules, booking.Deposit is null ? null : Right.TakeMoney) is { } refused)
        {
            return new(null, Said.Of([refused]));
        }

        by = rules.AsksForPin ? Someone.Name : by;
        var wrong = BookingCheck.Look(booking, rules, ShopDay.Today(clock));
        if (wrong.Count > 0)
        {
            return new(null, Said.Of(wrong));
        }

        var known = booking.CustomerId is { } id ? await database.Customers.SingleOrDefaultAsync(c => c.Id == id, cancel) : null;
        if (booking.CustomerId is not null && known is null)
        {
            return new(null, Said.Wrong("That customer is not in the book any more.", "Type the name anew."));
        }

        var photos = (booking.Photos ?? []).Select(p => PhotoFiles.Draft(p, clock.GetUtcNow())).ToList();
        if (photos.SelectMany(p => p.Objections).ToList() is { Count: > 0 } none)
        {
            return new(null, Said.Of(none));
        }

        var number = (await database.Jobs.MaxAsync(j => (int?)j.Number, cancel) ?? FirstNumber - 1) + 1;
        var unit = new UnitOnBench(booking.Maker.Trim(), booking.Model.Trim(), booking.Serial.Trim(), booking.MainsVolts);
        var job = JobOf(number, booking, known ?? New(booking), unit);
        job.Timeline.AddRange(photos.Select(p => p.Entry!));
        Place(job, by);
        job.Sheet = await SheetAsync(database, unit, cancel);
        // The card on the board names the customer, whose number a new one has only once it is stored.
        await using var whole = await database.Database.BeginTransactionAsync(cancel);
        database.Jobs.Add(job);
        foreach (var photo in photos.Select(p => p.Photo!).DistinctBy(p => p.File))
        {
            await PhotoFiles.KeepAsync(database, photo, cancel);
        }

        await database.SaveChangesAsync(cancel);
        database.Board.Add(BoardCard.Of(job));
        await database.SaveChangesAsync(cancel);
        await whole.CommitAsync(cancel);
        return new(new BookedJob(number), []);
    }

    private Job JobOf(int number, Booking booking, Customer customer, UnitOnBench unit)
    {
        var now = clock.GetUtcNow();
        List<TimelineEntry> timeline =
        [
            new BookedIn
            {
                Complaint = booking.Complaint.Trim(),
                Notes = new(
                    booking.Setting.Trim(),
                    booking.JustBefore.Trim(),
                    booking.Condition.Trim(),
                    booking.CameWith.Trim(),
                    booking.Worth,
                    booking.BenchFee,
                    booking.EarlierJob
                ),
            },
        ];
        if (booking.Deposit is { Figure: > 0 } deposit)
        {
            timeline.Add(
                new MoneyTaken
                {
                    What = new Payment(deposit, PaidBy.Cash, PaidFor.Deposit, ShopDay.Today(clock), "at the counter"),
                }
            );
        }

        var job = new Job
        {
            Number = number,
            Customer = customer,
            Unit = unit,
            BookedIn = now,
            Promised = booking.Promised is { } day ? ShopDay.Noon(day) : null,
            Limit = booking.Limit,
            Timeline = timeline,
        };
        return job;
    }

    private static void Place(Job job, string? by)
    {
        for (var i = 0; i < job.Timeline.Count; i++)
        {
            job.Timeline[i].Place(job.Number, i + 1, job.BookedIn, by);
        }
    }

    private static Customer New(Booking booking) =>
        new()
        {
            Name = booking.Name.Trim(),
            Contact = booking.Phone.Trim(),
            Mail = booking.Mail.Trim(),
            Address = booking.Address.Trim(),
        };

    /// <summary>The newest sheet that a job on the same model had.</summary>
    private static async Task<DrawnSheet?> SheetAsync(ShopDatabase database, UnitOnBench unit, CancellationToken cancel)
    {
        var key = BoardCard.Key(unit.Title);
        return await database
            .Jobs.Where(j => j.Sheet != null && database.Board.Any(c => c.JobNumber == j.Number && c.ModelKey == key))
            .OrderByDescending(j => j.Number)
            .Select(j => j.Sheet)
            .FirstOrDefaultAsync(cancel);
    }
}
