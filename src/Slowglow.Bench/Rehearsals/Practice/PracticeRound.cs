using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals.Practice;

/// <summary>
/// A learner against a hidden fault: readings from the solved unit, minutes for each, parts changed on suspicion, and at the end the truth. Calls may come
/// from several threads; they take turns.
/// </summary>
public sealed class PracticeRound
{
    /// <summary>Unsoldering, fitting and trying, with the parts to hand: common practice, no source.</summary>
    public const double MinutesToChange = 15;

    private readonly Lock gate = new();
    private readonly BenchUnit unit;
    private readonly HiddenUnit hidden;
    private readonly ExpectReadings expect;
    private readonly List<PracticeStep> steps = [];

    internal PracticeRound(BenchUnit unit, HiddenUnit hidden, int number)
    {
        (this.unit, this.hidden, Number) = (unit, hidden, number);
        expect = new ExpectReadings(unit);
    }

    public Sheet Sheet => unit.Sheet;

    /// <summary>The same number hides the same fault in the same unit.</summary>
    public int Number { get; }

    /// <summary>What the customer says.</summary>
    public string Complaint => hidden.Complaint;

    /// <summary>All that was done, in order.</summary>
    public IReadOnlyList<PracticeStep> Steps
    {
        get
        {
            lock (gate)
            {
                return [.. steps];
            }
        }
    }

    /// <summary>Spent so far.</summary>
    public double Minutes => Steps.Sum(s => s.Minutes);

    public bool IsFound => Steps.OfType<PracticeChange>().Any(c => c.Cured);

    public bool IsGivenUp { get; private set; }

    /// <summary>Nothing can be measured or changed any more, and the truth may be looked at.</summary>
    public bool IsOver => IsFound || IsGivenUp;

    /// <summary>What was wrong; null while the round is on.</summary>
    public HiddenFault? Truth => IsOver ? hidden.Fault : null;

    /// <summary>Takes a reading: a point, across two points or a part, and a kind where it is not DC. Ohms and diode tests are taken with the power off.</summary>
    public Parsed<PracticeReading> Measure(string asked, CancellationToken cancel = default)
    {
        var read = ReadingsReader.ReadProbe(asked, unit.Sheet);
        if (read.Value is not { } probe || read.HasErrors)
        {
            return new(null, [.. read.Findings.Select(f => f with { Place = Place.None })]);
        }
        lock (gate)
        {
            if (IsOver)
            {
                return Wrong<PracticeReading>("This round is over.", "put another unit on the bench");
            }
            var setup = probe.Kind is ProbeKind.Ohm or ProbeKind.Diode ? Setup.Cold : Setup.Default;
            var belongs = expect.Run(setup, [probe], cancel)[0];
            var before = hidden.Minutes;
            var shown = hidden.Measure(probe, setup);
            var step = new PracticeReading(probe, setup, shown, belongs, hidden.Minutes - before);
            steps.Add(step);
            return new(step, read.Findings);
        }
    }

    /// <summary>Changes a part on suspicion.</summary>
    public Parsed<PracticeChange> Change(string designator)
    {
        var part = unit.Sheet.Parts.FirstOrDefault(p =>
            string.Equals(p.Designator, designator.Trim(), StringComparison.OrdinalIgnoreCase)
        );
        lock (gate)
        {
            if (part is null)
            {
                return Wrong<PracticeChange>($"there is no part '{designator.Trim()}' on this sheet", "a designator such as R5");
            }
            if (IsOver)
            {
                return Wrong<PracticeChange>("This round is over.", "put another unit on the bench");
            }
            var cured = hidden.Fault.Cures.Contains(part.Designator);
            var blown = !cured && hidden.Fault.Faults.Any(f => f.Part == part.Designator);
            var step = new PracticeChange(part.Designator, cured, blown, MinutesToChange);
            steps.Add(step);
            return new(step, []);
        }
    }

    /// <summary>Ends the round.</summary>
    public void GiveUp()
    {
        lock (gate)
        {
            IsGivenUp = !IsFound;
        }
    }

    /// <summary>The way the program would have taken with the same unit and the same meter. Takes about as long as a few diagnoses.</summary>
    public RehearsalCase ProgramsWay(CancellationToken cancel = default) =>
        new RehearseUnit(unit).ProgramsWay(hidden, null, cancel);

    private static Parsed<T> Wrong<T>(string text, string remedy)
        where T : class => new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
