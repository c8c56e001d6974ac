using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow rewind SHEET T1</summary>
internal sealed class RewindCommand : Command<RewindSettings>
{
    public override int Execute(CommandContext context, RewindSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var request = RewindWords.Request(settings);
        var measured = RewindWords.Lines(settings.Measured, streams);
        var wound = RewindWords.Lines(settings.Wound, streams);
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        var question = new RewindTransformer(unit);
        var answer = Ask(question, settings.Transformer, measured, request, streams, cancellationToken);
        opened.Add("command line", answer.Findings);
        var form = answer.Value is { } found
            ? RewindTransformer.Check(found, wound)
            : new Parsed<IReadOnlyList<WoundCheckRow>>(null, []);
        opened.Add("command line", form.Findings);
        if (answer.Value is null || form.Value is null || opened.Wrong)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, RewindJson.From(answer.Value, form.Value, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            RewindReport.Write(streams.OutConsole(), unit.Sheet, answer.Value, form.Value);
        }
        return ExitCode.Ran;
    }

    private static Parsed<RewindAnswer> Ask(
        RewindTransformer question,
        string designator,
        IReadOnlyList<string> measured,
        RewindRequest request,
        Streams streams,
        CancellationToken cancel
    )
    {
        using var working = new Working(streams, "Working out the windings");
        return question.Run(designator, measured, request, cancel);
    }
}
