using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Power.Overload;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow overload SHEET T1</summary>
internal sealed class OverloadCommand : UnitCommand<PartSettings, OverloadAnswer>
{
    protected override string Doing => "Working out what overloads it";

    protected override Parsed<OverloadAnswer> Ask(
        BenchUnit unit,
        Opened opened,
        PartSettings settings,
        CancellationToken cancel
    ) => new FindOverloads(unit).Run(settings.Part, cancel);

    protected override object Json(OverloadAnswer answer, PartSettings settings, IReadOnlyList<DocumentFinding> findings) =>
        OverloadJson.From(settings.Part, answer, findings);

    protected override void Report(IAnsiConsole console, BenchUnit unit, OverloadAnswer answer, PartSettings settings) =>
        OverloadReport.Write(
            console,
            unit.Sheet.Parts.First(p => p.Designator.Equals(settings.Part, StringComparison.OrdinalIgnoreCase)),
            answer
        );
}
