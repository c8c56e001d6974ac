using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow stress SHEET</summary>
internal sealed class StressCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Working out what every part stands");
        var (rows, unsettled) = new StressUnit(unit).Run(cancellationToken);
        working.Dispose();
        if (settings.Json)
        {
            JsonOut.Write(streams, StressJson.From(rows, unsettled, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            StressReport.Write(streams.OutConsole(), unit.Sheet, rows, unsettled);
        }
        return ExitCode.Ran;
    }
}
