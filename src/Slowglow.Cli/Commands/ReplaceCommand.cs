using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow replace SHEET "R5 with 120k 1W"</summary>
internal sealed class ReplaceCommand : Command<ReplaceSettings>
{
    public override int Execute(CommandContext context, ReplaceSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Trying the other part");
        var answer = new ReplacePart(unit, opened.Text).Run(settings.Words, cancellationToken);
        working.Dispose();
        opened.Add("command line", answer.Findings);
        if (answer.Value is not { } replacement)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, ReplaceJson.From(replacement, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            ReplaceReport.Write(streams.OutConsole(), replacement);
        }
        return ExitCode.Ran;
    }
}
