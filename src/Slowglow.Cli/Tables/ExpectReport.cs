using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>expect</c> for people.</summary>
internal static class ExpectReport
{
    public static void Write(IAnsiConsole console, Sheet sheet, Setup setup, IReadOnlyList<Expectation> expectations)
    {
        console.Heading($"{sheet.Unit}, healthy, {SetupLine.Say(setup, sheet)}");
        var table = Layout.Table("Point", "Kind", ">Reads", "95 in 100 read", "Note");
        foreach (var e in expectations)
        {
            table.Row(
                e.Probe.Where,
                e.Probe.KindText,
                Figures.Nominal(e),
                Figures.Band(e.Low, e.High, e.Unit),
                Note(sheet, e.Probe)
            );
        }
        console.Write(table);
        console.Say(
            "Expectations of a model, with tolerances, valve spread, mains and a 10 Mohm meter; they are not permission."
        );
        if (!setup.PowerOff)
        {
            console.Say("Live readings: insulated probe, one hand, never alone.");
        }
    }

    private static string Note(Sheet sheet, Probe probe)
    {
        var isPoint = probe.Black == NetTable.Ground && !probe.IsInlet;
        var remark = sheet.Points.FirstOrDefault(p =>
            p.Where == probe.Where || (isPoint && sheet.Nets.Find(p.Where) == probe.Red)
        );
        return remark?.Note ?? "";
    }
}
