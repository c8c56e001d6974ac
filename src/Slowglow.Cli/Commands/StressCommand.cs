using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow stress SHEET</summary>
internal sealed class StressCommand : UnitCommand<SheetSettings, UnitStress>
{
    protected override string Doing => "Working out what every part stands";

    protected override Parsed<UnitStress> Ask(BenchUnit unit, Opened opened, SheetSettings settings, CancellationToken cancel) =>
        new(new StressUnit(unit).Run(cancel), []);

    protected override object Json(UnitStress answer, SheetSettings settings, IReadOnlyList<DocumentFinding> findings) =>
        StressJson.From(answer, findings);

    protected override void Report(IAnsiConsole console, BenchUnit unit, UnitStress answer, SheetSettings settings) =>
        StressReport.Write(console, unit.Sheet, answer);
}
