using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow overload SHEET T1</summary>
internal sealed class OverloadCommand : Command<PartSettings>
{
    public override int Execute(CommandContext context, PartSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Working out what overloads it");
        var answer = new FindOverloads(unit).Run(settings.Part, cancellationToken);
        working.Dispose();
        opened.Add("command line", answer.Findings);
        if (answer.Value is not { } causes)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, OverloadJson.From(settings.Part, causes, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            OverloadReport.Write(streams.OutConsole(), settings.Part, causes);
        }
        return ExitCode.Ran;
    }
}
