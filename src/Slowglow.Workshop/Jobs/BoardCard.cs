using System.Globalization;
using System.Text;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.Jobs;

/// <summary>A job as it hangs on the board: worked out from its timeline whenever that grows, so that the board need not read every timeline.</summary>
public sealed class BoardCard
{
    private const int LongestComplaint = 300;

    public required int JobNumber { get; init; }
    public int CustomerId { get; set; }
    public string Customer { get; set; } = "";
    public string Unit { get; set; } = "";
    public string Complaint { get; set; } = "";
    public JobState State { get; set; }
    public WaitsFor WaitsFor { get; set; }

    /// <summary>Since when it has waited for that.</summary>
    public DateTimeOffset Since { get; set; }
    public DateTimeOffset BookedIn { get; set; }

    /// <summary>The last promise; null when nothing is promised.</summary>
    public DateTimeOffset? Promised { get; set; }

    /// <summary>Parts that it cannot go on without; empty when there are none.</summary>
    public string Blocked { get; set; } = "";

    /// <summary>When the last of them was promised; null when nothing is.</summary>
    public DateTimeOffset? PartsDue { get; set; }

    /// <summary>Maker, model and serial in small letters without signs; empty when there is no serial: tells one unit from another.</summary>
    public string UnitKey { get; set; } = "";

    /// <summary>Maker and model in small letters without signs.</summary>
    public string ModelKey { get; set; } = "";

    /// <summary>All that the search box looks through, in small letters.</summary>
    public string Words { get; set; } = "";

    public int Readings { get; set; }

    /// <summary>Sequence of the last entry that it knows.</summary>
    public int LastSequence { get; set; }

    /// <summary>Writes the card of a job; customer and timeline have to be loaded.</summary>
    public static BoardCard Of(Job job)
    {
        var card = new BoardCard { JobNumber = job.Number };
        card.Rewrite(job);
        return card;
    }

    /// <summary>Brings the card up to the job's timeline.</summary>
    public void Rewrite(Job job)
    {
        var standing = job.Standing();
        var waits = WaitsForWords.Of(standing.State);
        Since = waits == WaitsFor && LastSequence > 0 ? Since : job.Timeline.MaxBy(e => e.Sequence)?.At ?? job.BookedIn;
        (CustomerId, Customer, Unit) = (job.Customer.Id, job.Customer.Name, job.Unit.Title);
        Complaint = standing.Complaint.Length > LongestComplaint ? standing.Complaint[..LongestComplaint] : standing.Complaint;
        (State, WaitsFor, BookedIn) = (standing.State, waits, job.BookedIn);
        Promised = PromiseOf(job);
        var dealings = JobDealings.After(job.Timeline);
        Blocked = waits == WaitsFor.Nothing ? "" : Blockers.Say(dealings);
        PartsDue =
            waits != WaitsFor.Nothing && Blockers.Due(dealings) is { } day
                ? new DateTimeOffset(day, new TimeOnly(12, 0), TimeSpan.Zero)
                : null;
        ModelKey = Key(job.Unit.Title);
        UnitKey = job.Unit.Serial.Length == 0 ? "" : Key(job.Unit.Title + job.Unit.Serial);
        Words = WordsOf(job, standing.Complaint);
        (Readings, LastSequence) = (standing.Readings.Count, standing.LastSequence);
    }

    /// <summary>Small letters and digits alone, of any script.</summary>
    public static string Key(string text) => new([.. Fold(text).Where(char.IsLetterOrDigit)]);

    /// <summary>For comparing what is typed with what is stored: small letters, compatibility forms folded, digits of every script as 0 to 9.</summary>
    public static string Fold(string text) =>
        new([.. Sound(text).Normalize(NormalizationForm.FormKC).ToLowerInvariant().Select(Digit)]);

    // Half a surrogate pair, as a cut or a broken keyboard leaves it, has no normal form.
    private static string Sound(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));

    private static char Digit(char c) => char.IsDigit(c) ? (char)('0' + CharUnicodeInfo.GetDecimalDigitValue(c)) : c;

    private static DateTimeOffset? PromiseOf(Job job) =>
        Striking.Counting(job.Timeline).OfType<PromiseChanged>().LastOrDefault() is { } changed
            ? changed.What.Day is { } day
                ? new DateTimeOffset(day, new TimeOnly(12, 0), TimeSpan.Zero)
                : null
            : job.Promised;

    private static string WordsOf(Job job, string complaint)
    {
        var digits = new string([.. Fold(job.Customer.Contact).Where(char.IsDigit)]);
        string[] all =
        [
            job.Number.ToString(CultureInfo.InvariantCulture),
            job.Customer.Name,
            job.Customer.Contact,
            digits,
            job.Customer.Mail,
            job.Unit.Title,
            job.Unit.Serial,
            complaint.Length > 1000 ? complaint[..1000] : complaint,
        ];
        return Fold(string.Join(' ', all.Where(a => a.Length > 0)));
    }
}
