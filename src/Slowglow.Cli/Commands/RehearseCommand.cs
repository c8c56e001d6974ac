using Slowglow.Bench.Rehearsals;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow rehearse SHEET</summary>
internal sealed class RehearseCommand : Command<RehearseSettings>
{
    public override int Execute(CommandContext context, RehearseSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var request = settings.Request();
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit)
        {
            return opened.SayWrong();
        }

        if (unit.Sheet.Signals.Count == 0)
        {
            throw new CannotRunException(
                $"{settings.Sheet} has no signal, so that nothing can be complained of. Add signal: {{ in: NET, out: NET }} to rehearse on it."
            );
        }

        RehearsalReport report;
        using (var working = new Working(streams, "Hiding faults and finding them"))
        {
            report = new RehearseUnit(unit).Run(request, working, null, cancellationToken);
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, RehearsalJson.From(unit.Sheet.Unit, report, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            RehearsalTable.Write(streams.OutConsole(), unit.Sheet, report);
        }
        return ExitCode.Ran;
    }
}
