using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Mappings;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests;

/// <summary>What every kind of database must do. A class per kind runs all of it.</summary>
public abstract class ShopContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Job_comes_back_as_it_was_booked()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));

        var job = await LoadAsync(under.Reopened(), 1001);

        Assert.Equal("Ada Fenwick", job.Customer.Name);
        Assert.Equal(Sample.Job(1001).Unit, job.Unit);
        Assert.Equal("sheet: 1\nunit: Tern 2\n", job.Sheet!.Text);
        Assert.Equal(Sample.Monday, job.BookedIn);
        Assert.Equal(Sample.Monday.AddDays(14), job.Promised);
        Assert.Equal(199.95m, job.Limit!.Figure);
        Assert.Equal("EUR", job.Limit.Currency);
    }

    [Fact]
    public async Task Timeline_replays_to_the_same_standing()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));

        var standing = (await LoadAsync(under.Reopened(), 1001)).Standing();

        Assert.Equal("thin, first channel", standing.Complaint);
        Assert.Equal("slow", standing.ChosenSetup);
        Assert.Equal(JobState.AwaitingParts, standing.State);
        Assert.Equal("mains: 110 V", Assert.Single(standing.Setups).Keys);
        Assert.Equal("HT1 = 280 V", Assert.Single(standing.Readings).Line);
        Assert.Equal((9, 7), (standing.LastSequence, standing.EvidenceSequence));
    }

    /// <summary>Compared as written for the database, which holds every figure of a record.</summary>
    [Fact]
    public async Task Every_kind_of_record_comes_back_as_it_was_written()
    {
        await using var under = await StartAsync();
        var job = Sample.Job(1001);
        job.Timeline.AddRange(Sample.WithRecords(1001));
        await AddAsync(under, job);

        var loaded = (await LoadAsync(under.Reopened(), 1001)).Timeline.OrderBy(e => e.Sequence).Skip(9).ToList();

        var kinds = typeof(TimelineEntry).Assembly.GetTypes().Count(t => !t.IsAbstract && t.IsSubclassOf(typeof(TimelineEntry)));
        Assert.Equal(kinds, (await LoadAsync(under.Shop, 1001)).Timeline.Select(e => e.GetType()).Distinct().Count());
        Assert.Equal(Sample.WithRecords(1001).Select(Told), loaded.Select(Told));
    }

    [Fact]
    public async Task Counter_notes_come_back_or_are_none()
    {
        await using var under = await StartAsync();
        var notes = new CounterNotes("bright input", "moved house", "one knob missing", "lead", new(400, "EUR"), null, 7);
        foreach (var (number, kept) in new[] { (1, notes), (2, null) })
        {
            var job = Sample.Job(number);
            job.Timeline.Clear();
            job.Timeline.Add(
                new BookedIn
                {
                    JobNumber = number,
                    Sequence = 1,
                    At = Sample.Monday,
                    Complaint = "x",
                    Notes = kept,
                }
            );
            await AddAsync(under, job);
        }

        Assert.Equal(notes, Assert.IsType<BookedIn>((await LoadAsync(under.Shop, 1)).Timeline[0]).Notes);
        Assert.Null(Assert.IsType<BookedIn>((await LoadAsync(under.Shop, 2)).Timeline[0]).Notes);
    }

    [Theory]
    [InlineData("UPDATE papers SET data = ''")]
    [InlineData("DELETE FROM papers")]
    public async Task Paper_cannot_be_changed_behind_the_model(string statement)
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        await using var database = under.Shop.CreateDbContext();
        database.Papers.Add(Sample.Paper(1001, 1));
        await database.SaveChangesAsync(Cancel);

        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() =>
            database.Database.ExecuteSqlRawAsync(statement, Cancel)
        );

        await using var again = under.Reopened().CreateDbContext();
        Assert.Equal(JsonText.Write(Sample.Paper(1001, 1).Paper), JsonText.Write((await again.Papers.SingleAsync(Cancel)).Paper));
    }

    [Fact]
    public async Task Two_papers_of_a_kind_cannot_take_one_number()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        foreach (var fails in new[] { false, true })
        {
            await using var database = under.Shop.CreateDbContext();
            database.Papers.Add(Sample.Paper(1001, 1));
            Assert.Equal(fails, await Record.ExceptionAsync(() => database.SaveChangesAsync(Cancel)) is DbUpdateException);
        }
    }

    [Fact]
    public async Task Board_is_written_for_jobs_that_have_no_card_or_an_old_one()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        await using var database = under.Shop.CreateDbContext();

        Assert.Equal(1, await BoardUpkeep.RunAsync(database, Cancel));
        Assert.Equal(0, await BoardUpkeep.RunAsync(database, Cancel));
        var card = await database.Board.AsNoTracking().SingleAsync(Cancel);
        Assert.Equal((WaitsFor.Parts, 9, "Harrow & Pike Tern 2"), (card.WaitsFor, card.LastSequence, card.Unit));
        Assert.Contains("hp-0417", card.Words, StringComparison.Ordinal);

        database.Timeline.Add(
            new StateChanged
            {
                JobNumber = 1001,
                Sequence = 10,
                At = Sample.Monday,
                State = JobState.OnSoak,
            }
        );
        await database.SaveChangesAsync(Cancel);
        Assert.Equal(1, await BoardUpkeep.RunAsync(database, Cancel));
        Assert.Equal(WaitsFor.Us, (await database.Board.AsNoTracking().SingleAsync(Cancel)).WaitsFor);
    }

    [Fact]
    public async Task Times_sort_in_the_database_and_keep_their_milliseconds()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(3, Sample.Monday.AddMilliseconds(2)));
        await AddAsync(under, Sample.Job(1, Sample.Monday.AddMilliseconds(3)));
        await AddAsync(under, Sample.Job(2, Sample.Monday.AddMilliseconds(1)));

        await using var database = under.Shop.CreateDbContext();
        var numbers = await database.Jobs.OrderBy(j => j.BookedIn).Select(j => j.Number).ToListAsync(Cancel);

        Assert.Equal([2, 3, 1], numbers);
    }

    [Fact]
    public async Task Timeline_entry_cannot_be_changed_through_the_model()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        await using var database = under.Shop.CreateDbContext();
        var entry = await database.Timeline.FirstAsync(Cancel);

        database.Timeline.Remove(entry);

        await Assert.ThrowsAsync<InvalidOperationException>(() => database.SaveChangesAsync(Cancel));
    }

    [Theory]
    [InlineData("UPDATE timeline SET text = 'V1.6 = 190 V' WHERE \"Sequence\" = 4")]
    [InlineData("DELETE FROM timeline")]
    public async Task Timeline_entry_cannot_be_changed_behind_the_model(string statement)
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        await using var database = under.Shop.CreateDbContext();

        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() =>
            database.Database.ExecuteSqlRawAsync(statement, Cancel)
        );

        Assert.Equal(9, await database.Timeline.CountAsync(Cancel));
    }

    [Fact]
    public async Task Two_entries_cannot_take_one_sequence()
    {
        await using var under = await StartAsync();
        await AddAsync(under, Sample.Job(1001));
        await using var database = under.Shop.CreateDbContext();

        database.Timeline.Add(
            new NoteWritten
            {
                JobNumber = 1001,
                Sequence = 9,
                At = Sample.Monday,
                Text = "again",
            }
        );

        await Assert.ThrowsAsync<DbUpdateException>(() => database.SaveChangesAsync(Cancel));
    }

    [Fact]
    public async Task Entry_of_no_job_is_refused()
    {
        await using var under = await StartAsync();
        await using var database = under.Shop.CreateDbContext();

        database.Timeline.Add(
            new NoteWritten
            {
                JobNumber = 77,
                Sequence = 1,
                At = Sample.Monday,
                Text = "whose?",
            }
        );

        await Assert.ThrowsAsync<DbUpdateException>(() => database.SaveChangesAsync(Cancel));
    }

    [Fact]
    public async Task Model_has_not_drifted_from_its_migrations()
    {
        await using var under = await StartAsync();
        await using var database = under.Shop.CreateDbContext();

        Assert.False(database.Database.HasPendingModelChanges());
    }

    private static string Told(TimelineEntry entry) =>
        $"{entry.Sequence} {entry.By} {entry.At:O} {JsonText.Write<object>(((dynamic)entry).What)}";

    private static async Task AddAsync(IShopUnderTest under, Job job)
    {
        await using var database = under.Shop.CreateDbContext();
        database.Jobs.Add(job);
        await database.SaveChangesAsync(Cancel);
    }

    private static async Task<Job> LoadAsync(IDbContextFactory<ShopDatabase> shop, int number)
    {
        await using var database = shop.CreateDbContext();
        return await database
            .Jobs.Include(j => j.Customer)
            .Include(j => j.Sheet)
            .Include(j => j.Timeline)
            .SingleAsync(j => j.Number == number, Cancel);
    }
}
