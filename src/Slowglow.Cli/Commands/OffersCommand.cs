using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow offers SHEET T1 --offer ...</summary>
internal sealed class OffersCommand : Command<OffersSettings>
{
    public override int Execute(CommandContext context, OffersSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Trying every offer");
        var answer = new CompareOffers(unit).Run(settings.Transformer, settings.Offers, cancellationToken);
        working.Dispose();
        opened.Add("command line", answer.Findings);
        if (answer.Value is not { } offers)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, OffersJson.From(settings.Transformer, offers, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            OffersReport.Write(streams.OutConsole(), settings.Transformer, offers);
        }
        return ExitCode.Ran;
    }
}
