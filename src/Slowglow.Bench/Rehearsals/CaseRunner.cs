using System.Diagnostics;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>Takes one hidden unit from the complaint to the cure.</summary>
internal sealed class CaseRunner(BenchUnit unit, RehearsalRules rules)
{
    private static readonly Setup[] Setups = [Setup.Default, Setup.Cold];

    public RehearsalCase Run(HiddenUnit hidden, Strategy strategy, int seed, CancellationToken cancel)
    {
        var chooser = Chooser(hidden, strategy, seed);
        var tried = new HashSet<Choice>();
        var steps = new List<RehearsalStep>();
        var statements = new List<Statement>();
        double slowest = 0;
        var result = Diagnose(hidden, cancel);
        statements.Add(Say(hidden, result, 0));
        while (steps.Count < rules.MostReadings && !IsProven(result) && chooser.Next(hidden, result, tried) is { } choice)
        {
            tried.Add(choice);
            var reading = hidden.Measure(choice.Probe, choice.Setup);
            var clock = Stopwatch.StartNew();
            result = reading is null ? result : Diagnose(hidden, cancel);
            slowest = Math.Max(slowest, clock.Elapsed.TotalMilliseconds);
            statements.Add(Say(hidden, result, steps.Count + 1));
            var first = result.Suspects.FirstOrDefault();
            steps.Add(new(choice.Probe, choice.Setup, reading, first?.Part ?? "", first?.Probability ?? 0));
        }
        return Judge(hidden, result, slowest, steps, statements);
    }

    private DiagnosisResult Diagnose(HiddenUnit hidden, CancellationToken cancel) =>
        unit.Diagnostician.Diagnose(new(hidden.Complaint, Setups, [.. hidden.Readings]), null, cancel);

    private bool IsProven(DiagnosisResult result) => result.Suspects.Count > 0 && result.Suspects[0].Probability >= rules.Proof;

    private IReadingChooser Chooser(HiddenUnit hidden, Strategy strategy, int seed) =>
        strategy switch
        {
            Strategy.Program => new ProgramChooser(),
            Strategy.Random => new RandomChooser(new ReadingOffer(unit.Sheet), new Random(seed)),
            Strategy.Cheapest => new CheapestChooser(new ReadingOffer(unit.Sheet)),
            _ => new HalvingChooser(unit, ComplainedOf(hidden.Complaint)),
        };

    /// <summary>The first channel that is not said to be fine.</summary>
    private SignalPath? ComplainedOf(string complaint)
    {
        var fine = complaint.Split(", ").TakeWhile(c => c.EndsWith("channel fine", StringComparison.Ordinal)).Count();
        return unit.Sheet.Signals.Skip(fine).FirstOrDefault() ?? unit.Sheet.Signals.FirstOrDefault();
    }

    private static Statement Say(HiddenUnit hidden, DiagnosisResult result, int readings) =>
        new(result.Suspects.FirstOrDefault()?.Probability ?? 0, RankOf(hidden, result) == 1, readings, hidden.Minutes);

    private static int RankOf(HiddenUnit hidden, DiagnosisResult result)
    {
        for (var i = 0; i < result.Suspects.Count; i++)
        {
            if (IsRight(hidden.Fault, result.Suspects[i]))
            {
                return i + 1;
            }
        }
        return int.MaxValue;
    }

    /// <summary>A single suspect is right when it, or its inseparable group, holds a true part; two at once only when both are at fault.</summary>
    private static bool IsRight(HiddenFault hidden, Suspect suspect) =>
        suspect.Second is null
            ? suspect.Group.Any(hidden.Cures.Contains)
            : hidden.Cures.Contains(suspect.Fault.Part) && hidden.Cures.Contains(suspect.Second.Part);

    private RehearsalCase Judge(
        HiddenUnit hidden,
        DiagnosisResult result,
        double slowest,
        List<RehearsalStep> steps,
        List<Statement> statements
    )
    {
        var first = result.Suspects.FirstOrDefault();
        return new(
            hidden.Fault,
            hidden.Complaint,
            RankOf(hidden, result),
            first?.Part ?? "",
            first?.Probability ?? 0,
            first?.Group.Count ?? 0,
            first?.Second is not null,
            result.NoneOfThese,
            rules.Certainty,
            hidden.Minutes,
            slowest,
            steps,
            statements
        );
    }
}
