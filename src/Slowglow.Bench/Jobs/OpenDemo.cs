using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs.Demo;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Bench.Jobs;

/// <summary>Puts the invented demo jobs into an empty job book.</summary>
public sealed class OpenDemo(IDbContextFactory<ShopDatabase> shop, BenchUnits units, TimeProvider clock)
{
    private const int FirstNumber = 1001;

    /// <summary>Does nothing when there are jobs already. A folder that cannot be read is left out, with its findings.</summary>
    /// <param name="folders">Null = all that comes with the program: its folders, bins and jobs that went home.</param>
    /// <returns>How many jobs with a sheet were put in.</returns>
    public async Task<(int Jobs, IReadOnlyList<Finding> Findings)> RunAsync(
        IReadOnlyList<string>? folders = null,
        CancellationToken cancel = default
    )
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        if (await database.Jobs.AnyAsync(cancel))
        {
            return (0, []);
        }

        List<Finding> findings = [];
        List<DemoUnit> read = [];
        foreach (var folder in folders ?? DemoFolders.Find())
        {
            var unit = await DemoUnit.ReadAsync(folder, units, cancel);
            findings.AddRange(unit.Findings.Where(f => f.Severity == Severity.Error));
            read.AddRange(unit.Value is { } value ? [value] : []);
        }

        Book(database, read);
        if (folders is null)
        {
            await DemoStock.FillAsync(database, clock.GetUtcNow(), cancel);
            await new DemoPast(database, clock).BookAsync(FirstNumber, cancel);
        }

        await database.SaveChangesAsync(cancel);
        await BoardUpkeep.RunAsync(database, cancel);
        return (read.Count, findings);
    }

    /// <summary>Numbers follow the order in which the units came over the counter.</summary>
    private void Book(ShopDatabase database, List<DemoUnit> read) =>
        database.Jobs.AddRange(
            read.OrderBy(u => u.Card.BookedIn ?? DateTimeOffset.MaxValue).Select((unit, i) => JobOf(unit, FirstNumber + i))
        );

    private Job JobOf(DemoUnit unit, int number)
    {
        var (card, sheet) = (unit.Card, unit.Sheet);
        var now = clock.GetUtcNow();
        var booked = card.BookedIn ?? now;
        var maker = card.Maker ?? sheet.Maker ?? "";
        var model = card.Model ?? sheet.Unit;
        return new Job
        {
            Number = number,
            Customer = new Customer { Name = card.Customer, Contact = card.Contact },
            Unit = new UnitOnBench(maker, model, card.Serial, sheet.Mains.Volts),
            Sheet = new DrawnSheet
            {
                Title = $"{maker} {model}".Trim(),
                Text = unit.SheetText,
                AddedAt = now,
            },
            BookedIn = booked,
            Promised = card.Promised,
            Limit = card.Limit,
            Timeline = [.. Entries(unit, number, booked, now)],
        };
    }

    private static IEnumerable<TimelineEntry> Entries(DemoUnit unit, int number, DateTimeOffset booked, DateTimeOffset now)
    {
        var sequence = 1;
        var complaint = unit.Readings.Complaint ?? unit.Card.Complaint ?? "";
        yield return new BookedIn
        {
            JobNumber = number,
            Sequence = sequence++,
            At = booked,
            Complaint = complaint,
        };
        foreach (var note in unit.Card.Condition)
        {
            yield return new NoteWritten
            {
                JobNumber = number,
                Sequence = sequence++,
                At = booked,
                Text = "Came in with: " + note,
            };
        }

        yield return new StateChanged
        {
            JobNumber = number,
            Sequence = sequence++,
            At = now,
            State = unit.Card.State,
        };
        foreach (var setup in unit.Readings.Setups)
        {
            yield return new SetupDescribed
            {
                JobNumber = number,
                Sequence = sequence++,
                At = now,
                Name = setup.Name,
                Keys = SetupKeys.Write(setup),
            };
        }

        foreach (var reading in unit.Readings.Readings.DistinctBy(r => r.Place))
        {
            yield return new ReadingTaken
            {
                JobNumber = number,
                Sequence = sequence++,
                At = now,
                Line = reading.Text.Trim(),
                Setup = reading.Setup.Name,
            };
        }
    }
}
