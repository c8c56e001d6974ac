using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow replace SHEET "R5 with 120k 1W"</summary>
internal sealed class ReplaceCommand : UnitCommand<ReplaceSettings, Replacement>
{
    protected override string Doing => "Trying the other part";

    protected override Parsed<Replacement> Ask(
        BenchUnit unit,
        Opened opened,
        ReplaceSettings settings,
        CancellationToken cancel
    ) => new ReplacePart(unit, opened.Text).Run(settings.Words, cancel);

    protected override object Json(Replacement answer, ReplaceSettings settings, IReadOnlyList<DocumentFinding> findings) =>
        ReplaceJson.From(answer, findings);

    protected override void Report(IAnsiConsole console, BenchUnit unit, Replacement answer, ReplaceSettings settings) =>
        ReplaceReport.Write(console, answer);
}
