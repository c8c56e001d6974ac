using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Sheets.Setups;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow levels SHEET</summary>
internal sealed class LevelsCommand : Command<LevelsSettings>
{
    public override int Execute(CommandContext context, LevelsSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        var known = opened.KnownSetups(settings.Readings);
        var chosen = opened.Chosen(settings.Setups, known);
        var faults = Faults(settings.Faults, opened);
        if (opened.Wrong)
        {
            return opened.SayWrong();
        }

        if (chosen.Count > 1)
        {
            throw new CannotRunException("`levels` answers for one --setup at a time.");
        }

        var answer = Answer(opened.Unit!, chosen[0], faults, streams, cancellationToken);
        if (settings.Json)
        {
            JsonOut.Write(streams, LevelsJson.From(answer, opened.Findings, known));
        }
        else
        {
            opened.SayWarnings();
            LevelsReport.Write(streams.OutConsole(), opened.Unit!.Sheet, answer);
        }
        return ExitCode.Ran;
    }

    private static LevelsAnswer Answer(BenchUnit unit, Setup setup, Fault[] faults, Streams streams, CancellationToken cancel)
    {
        using var working = new Working(streams, "Working out levels and headroom");
        var question = new ComputeLevels(unit);
        var character = new ComputeCharacter(unit);
        var compared = faults.Length > 0;
        return new(
            setup,
            faults,
            question.Run(setup, faults, cancel),
            compared ? question.Run(setup, [], cancel) : null,
            character.Run(setup, faults, cancel),
            compared ? character.Run(setup, [], cancel) : null,
            character.Concerns(setup, faults, cancel)
        );
    }

    private static Fault[] Faults(string[] words, Opened opened)
    {
        if (opened.Unit is not { } unit)
        {
            return [];
        }

        var read = words.Select(w => FaultReader.Read(w, unit.Circuit)).ToArray();
        opened.Add("command line", read.SelectMany(r => r.Findings));
        return [.. read.Select(r => r.Value).OfType<Fault>()];
    }
}
