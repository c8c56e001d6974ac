using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow expect SHEET</summary>
internal sealed class ExpectCommand : Command<SetupSettings>
{
    public override int Execute(CommandContext context, SetupSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        var known = opened.KnownSetups(settings.Readings);
        var chosen = opened.Chosen(settings.Setups, known);
        if (opened.Wrong)
        {
            return opened.SayWrong();
        }

        opened.SayWarnings();
        var question = new ExpectReadings(opened.Unit!);
        using var working = new Working(streams, "Working out what every point should read");
        var answers = chosen.Select(s => (Setup: s, Expectations: question.Run(s, cancellationToken))).ToArray();
        working.Dispose();
        if (settings.Json)
        {
            JsonOut.Write(streams, answers.SelectMany(a => a.Expectations.Select(e => ExpectationJson.From(e, a.Setup, known))));
            return ExitCode.Ran;
        }

        foreach (var (setup, expectations) in answers)
        {
            ExpectReport.Write(streams.OutConsole(), opened.Unit!.Sheet, setup, expectations);
        }
        return ExitCode.Ran;
    }
}
