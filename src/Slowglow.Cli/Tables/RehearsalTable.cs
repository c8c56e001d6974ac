using System.Globalization;
using Slowglow.Bench.Rehearsals;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>rehearse</c> for people: what it came to, whether probabilities meant what they said, then case by case.</summary>
internal static class RehearsalTable
{
    public static void Write(IAnsiConsole console, Sheet sheet, RehearsalReport report)
    {
        console.Heading($"{sheet.Unit}: {report.Singles.Count} hidden faults, readings chosen by {By(report.Request.By)}");
        console.Say($"The true part came first in {Share(report.First)}, in the first three in {Share(report.FirstThree)}.");
        console.Say(
            $"{Share(report.Certain)} reached {Share(report.Request.Rules.Certainty)}, and {Share(report.CertainAndRight)} of those were right; "
                + $"{Number(report.Readings)} readings and {Number(report.Minutes)} minutes to there on average, those given up included; "
                + $"{Number(report.ReadingsToTheEnd)} readings until nothing more was proposed."
        );
        console.Say(
            $"A right first suspect was one part alone in {Share(report.Alone)}, {Number(report.Group)} parts on average."
        );
        Others(console, "two faults", report.Doubles);
        Others(console, "a part of the wrong value", report.WrongValues);
        Others(console, "two nets bridged", report.Bridges);
        Reliability(console, report.OnTheWay);
        Cases(console, report.Cases);
    }

    private static void Others(IAnsiConsole console, string what, IReadOnlyList<RehearsalCase> cases)
    {
        if (cases.Count > 0)
        {
            var share = Share(RehearsalReport.WithoutOverclaim(cases));
            console.Say($"{cases.Count} units with {what}: no claim above 70 % for a part that is not at fault in {share}.");
        }
    }

    private static void Reliability(IAnsiConsole console, Reliability reliability)
    {
        console.Heading("What was claimed of the first suspect, and what was so");
        var table = Layout.Table(">Claimed", ">Statements", ">On average", ">True");
        foreach (var bin in reliability.Bins.Where(b => b.Statements > 0))
        {
            table.Row($"{Share(bin.Low)} to {Share(bin.High)}", Whole(bin.Statements), Share(bin.Claimed), Share(bin.Right));
        }
        console.Write(table);
        console.Say($"Expected calibration error: {Share(reliability.ExpectedError)}.");
    }

    private static void Cases(IAnsiConsole console, IReadOnlyList<RehearsalCase> cases)
    {
        console.Heading("Case by case");
        var table = Layout.Table("Hidden", "Complaint", ">Place", "First suspect", ">Claimed", ">Readings", ">Minutes");
        foreach (var c in cases)
        {
            var others = c.FirstGroup > 1 ? $" (of {c.FirstGroup})" : "";
            table.Row(
                c.Hidden.Words,
                c.Complaint,
                c.Rank == int.MaxValue ? "-" : Whole(c.Rank),
                c.First + others,
                Share(c.FirstProbability),
                Whole(c.Steps.Count),
                Whole((int)Math.Round(c.Minutes))
            );
        }
        console.Write(table);
    }

    private static string By(Strategy strategy) =>
        strategy switch
        {
            Strategy.Program => "the program",
            Strategy.Halving => "half-splitting",
            Strategy.Random => "chance",
            _ => "price",
        };

    private static string Share(double share) => double.IsNaN(share) ? "-" : Figures.Percent(share);

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
