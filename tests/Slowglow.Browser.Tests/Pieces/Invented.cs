using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Web.Desks;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Browser.Tests.Pieces;

/// <summary>An invented answer, for drawing the pieces without solving anything.</summary>
internal static class Invented
{
    public static readonly Setup Bench = new() { Name = "bench", MainsVolts = 230 };
    public static readonly Setup Cold = new() { Name = "cold", PowerOff = true };
    private static readonly DateTimeOffset Monday = new(2026, 11, 2, 9, 30, 0, TimeSpan.Zero);

    public static Sheet Sheet =>
        new()
        {
            Unit = "Kittiwake 15",
            Mains = new Mains(230, 50, 0.06),
            Switches = [],
            Controls = [],
            Parts = [],
            Signals = [],
            Nets = new NetTable(["HT1", "V1.6"], new() { ["HT1"] = "HT1", ["V1.6"] = "V1.6" }),
            Points = [],
            Assumptions = [],
        };

    public static Probe Dc(string where) => new(where, where, NetTable.Ground, ProbeKind.Dc);

    public static Reading Read(string where, double volts, Setup? setup = null) =>
        new(
            Dc(where),
            setup ?? Bench,
            MeterSaid.Value,
            volts,
            MeterClass.Handheld,
            FormattableString.Invariant($"{where} = {volts} V"),
            Place.None
        );

    public static Expectation Expect(string where, double nominal, double half) =>
        new(Dc(where), AnswerKind.Value, nominal, nominal - half, nominal + half, "V");

    public static OpenedJob Job(params StandingReading[] readings)
    {
        TimelineEntry[] timeline =
        [
            new BookedIn
            {
                JobNumber = 1001,
                Sequence = 1,
                At = Monday,
                Complaint = "first channel thin and gritty",
            },
            new ReadingTaken
            {
                JobNumber = 1001,
                Sequence = 2,
                At = Monday,
                Line = "V1.6 = 62 V",
                Setup = "bench",
            },
        ];
        var job = new Job
        {
            Number = 1001,
            Customer = new Customer { Name = "Ottoline Marsh" },
            Unit = new UnitOnBench("Sallow & Finch", "Kittiwake 15", "KW-0231", 230),
            Sheet = new DrawnSheet
            {
                Title = "Kittiwake 15",
                Text = "",
                AddedAt = Monday,
            },
            BookedIn = Monday,
            Timeline = [.. timeline],
        };
        return new(job, job.Standing(), null, [Bench, Cold], Bench, readings, []);
    }

    public static DiagnosisResult Diagnosis(params ReadingVerdict[] verdicts) =>
        new(
            [Drifted, Emission],
            0.01,
            0.04,
            [Next],
            [new RootCause("C6", "R10", "C6 leaky would pull anode current through R10 and cook it: check it first.")],
            [new UnderstoodWord("thin", "thin", "first", true), new UnderstoodWord("odd", "", null, false)],
            verdicts,
            "R10 has most likely drifted up."
        );

    public static Suspect Drifted =>
        new(
            "R10",
            new Fault("R10", "", FailureMode.Drifted, 4.7),
            0.82,
            ["R10"],
            [new(new Fault("R10", "", FailureMode.Drifted, 4.7), 0.6), new(new Fault("R10", "", FailureMode.Drifted, 10), 0.22)],
            ["The anode of V1 at 62 V, where 181 V belongs, is within a volt of what this fault gives."],
            ["HT4 should have risen by 3 V, and has not."],
            ""
        );

    public static Suspect Emission =>
        new(
            "V1",
            new Fault("V1", "2", FailureMode.LowEmission, 0.4),
            0.13,
            ["V1", "R9"],
            [new(new Fault("V1", "2", FailureMode.LowEmission, 0.4), 0.13)],
            [],
            ["The anode would read higher, not lower."],
            "Swap V1, or lift one leg of R9 and measure it."
        );

    public static NextReading Next =>
        new(
            new Probe("R10", "HT4", "V1.6", ProbeKind.Ohm),
            Cold,
            1.4,
            3,
            "low",
            "It tells a drifted anode load from a valve that draws too much.",
            [
                new("above 300 kohm", 3e5, double.PositiveInfinity, 0.8, "R10 has drifted up."),
                new("about 100 kohm", 9e4, 1.1e5, 0.2, "R10 is fine; V1 or R9."),
            ]
        );

    public static LevelComparison Levels()
    {
        ChannelLevels healthy = new(
            "first",
            0.02,
            9,
            11,
            0.024,
            15,
            0.004,
            0,
            [new("IN1", 0.02, double.NaN), new("V1.6", 1.1, 55), new("OUT", 9, 8.2)]
        );
        ChannelLevels actual = healthy with
        {
            LevelVolts = 3.1,
            CleanVolts = 3.4,
            CleanWatts = 1.4,
            Stages = [new("IN1", 0.02, double.NaN), new("V1.6", 0.38, 19), new("OUT", 3.1, 8.2)],
        };
        ChannelLevels second = healthy with { Channel = "second" };
        return new(
            Drifted.Fault,
            [new(healthy, actual, LevelWords.Compare(healthy, actual)), new(second, second, LevelWords.Compare(second, second))]
        );
    }

    public static DeskPicture Picture()
    {
        StandingReading low = new(2, Monday, Read("V1.6", 62));
        StandingReading fine = new(3, Monday, Read("HT1", 318));
        var job = Job(low, fine);
        var verdicts = new[]
        {
            new ReadingVerdict(low.Reading, 181, 166, 196, -15, "far too low"),
            new ReadingVerdict(fine.Reading, 315, 290, 340, 0.2, "as expected"),
        };
        Expectation[] expected =
        [
            Expect("V1.6", 181, 15),
            Expect("V1.8", 1.42, 0.2),
            Expect("HT1", 315, 25),
            Expect("HT2", 300, 24),
        ];
        return new(
            job,
            [],
            new(expected, DeskPicture.ExpectedFor(job), TimeSpan.FromSeconds(0.1)),
            new(Diagnosis(verdicts), DeskPicture.DiagnosisFor(job), TimeSpan.FromSeconds(0.12)),
            new(Levels(), "R10 drifted up", TimeSpan.FromSeconds(0.3))
        );
    }
}
