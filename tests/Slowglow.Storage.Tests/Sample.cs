using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Storage.Tests;

/// <summary>An invented job with an entry of every kind.</summary>
internal static class Sample
{
    public static readonly DateTimeOffset Monday = new(2026, 11, 2, 9, 30, 15, 250, TimeSpan.Zero);

    public static Job Job(int number, DateTimeOffset? bookedIn = null) =>
        new()
        {
            Number = number,
            Customer = new Customer { Name = "Ada Fenwick", Contact = "by letter" },
            Unit = new UnitOnBench("Harrow & Pike", "Tern 2", "HP-0417", 230),
            Sheet = new DrawnSheet
            {
                Title = "Harrow & Pike Tern 2",
                Text = "sheet: 1\nunit: Tern 2\n",
                AddedAt = Monday,
            },
            BookedIn = bookedIn ?? Monday,
            Promised = Monday.AddDays(14),
            Limit = new Amount(199.95m, "EUR"),
            Timeline = [.. EveryKind(number)],
        };

    public static IEnumerable<TimelineEntry> EveryKind(int number)
    {
        yield return new BookedIn
        {
            JobNumber = number,
            Sequence = 1,
            At = Monday,
            Complaint = "thin and gritty",
        };
        yield return new SetupDescribed
        {
            JobNumber = number,
            Sequence = 2,
            At = Monday,
            Name = "slow",
            Keys = "mains: 110 V",
        };
        yield return new SetupChosen
        {
            JobNumber = number,
            Sequence = 3,
            At = Monday,
            Setup = "slow",
        };
        yield return new ReadingTaken
        {
            JobNumber = number,
            Sequence = 4,
            At = Monday,
            Line = "V1.6 = 62 V",
            Setup = "slow",
        };
        yield return new ReadingTaken
        {
            JobNumber = number,
            Sequence = 5,
            At = Monday,
            Line = "HT1 = 280 V",
            Setup = "slow",
        };
        yield return new ReadingWithdrawn
        {
            JobNumber = number,
            Sequence = 6,
            At = Monday,
            Reading = 4,
        };
        yield return new ComplaintChanged
        {
            JobNumber = number,
            Sequence = 7,
            At = Monday,
            Complaint = "thin, first channel",
        };
        yield return new StateChanged
        {
            JobNumber = number,
            Sequence = 8,
            At = Monday,
            State = JobState.AwaitingParts,
        };
        yield return new NoteWritten
        {
            JobNumber = number,
            Sequence = 9,
            At = Monday,
            Text = "lead replaced before",
        };
    }
}
