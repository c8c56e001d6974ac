using System.Globalization;
using System.Text;
using Slowglow.Bench.Rehearsals;

namespace Slowglow.Trials;

/// <summary>Writes the tables of docs/rehearsal.md.</summary>
internal static class Report
{
    /// <summary>One row a sheet, and one for all of them.</summary>
    public static string Table(IReadOnlyList<(string Unit, RehearsalReport Report)> all)
    {
        var text = new StringBuilder();
        text.AppendLine(
            "| unit | faults | first | first three | at 90 %, true | readings | minutes | alone | calibration error | two faults | wrong value | bridge | slowest answer, 95 % |"
        );
        text.AppendLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var (unit, report) in all)
        {
            text.AppendLine(Row(unit, report));
        }
        if (all.Count > 1)
        {
            text.AppendLine(Row("**all**", new(all[0].Report.Request, [.. all.SelectMany(r => r.Report.Cases)])));
        }
        return text.ToString();
    }

    /// <summary>What was claimed and what was so, over all sheets.</summary>
    public static string Reliability(IReadOnlyList<(string Unit, RehearsalReport Report)> all)
    {
        var text = new StringBuilder();
        text.AppendLine("| claimed | statements | on average | true |");
        text.AppendLine("| --- | --- | --- | --- |");
        var whole = new RehearsalReport(new(), [.. all.SelectMany(r => r.Report.Cases)]);
        foreach (var b in whole.OnTheWay.Bins.Where(b => b.Statements > 0))
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"| {100 * b.Low:0} to {100 * b.High:0} % | {b.Statements} | {100 * b.Claimed:0.0} % | {100 * b.Right:0.0} % |"
            );
        }
        return text.ToString();
    }

    /// <summary>Case by case, separated by tabs: for looking into what went wrong.</summary>
    public static string Line(string unit, RehearsalCase c)
    {
        var way = string.Join(
            "; ",
            c.Steps.Select(s =>
                $"{s.Probe.Where} {s.Probe.KindText} on {s.Setup.Name} = {Shown(s)} ({s.Suspect} {s.Probability:0.00})"
            )
        );
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{unit}\t{c.Hidden.Kind}\t{c.Hidden.Words}\t{c.Complaint}\t{(c.Rank == int.MaxValue ? 0 : c.Rank)}\t{c.First}\t{c.FirstGroup}\t{c.FirstProbability:0.000}\t{c.NoneOfThese:0.000}\t{c.Steps.Count}\t{c.Minutes:0}\t{way}"
        );
    }

    private static string Shown(RehearsalStep step) =>
        step.Reading is null ? "unsteady"
        : double.IsNaN(step.Reading.Value) ? "OL"
        : step.Reading.Value.ToString("G4", CultureInfo.InvariantCulture);

    private static string Row(string unit, RehearsalReport r)
    {
        double[] slow = [.. r.Cases.Select(c => c.SlowestMilliseconds).Order()];
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {unit} | {r.Singles.Count} | {Share(r.First)} | {Share(r.FirstThree)} | {Share(r.Certain)}, {Share(r.CertainAndRight)} | {r.Readings:0.0} | {r.Minutes:0} | {Share(r.Alone)} | {100 * r.OnTheWay.ExpectedError:0.0} % | {Others(r.Doubles)} | {Others(r.WrongValues)} | {Others(r.Bridges)} | {slow[slow.Length * 95 / 100]:0} ms |"
        );
    }

    private static string Others(IReadOnlyList<RehearsalCase> cases) =>
        cases.Count == 0
            ? "-"
            : string.Create(CultureInfo.InvariantCulture, $"{Share(RehearsalReport.WithoutOverclaim(cases))} of {cases.Count}");

    private static string Share(double share) =>
        double.IsNaN(share) ? "-" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");
}
