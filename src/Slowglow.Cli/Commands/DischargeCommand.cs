using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow discharge SHEET</summary>
internal sealed class DischargeCommand : Command<FaultedSettings>
{
    public override int Execute(CommandContext context, FaultedSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        var read = opened.Unit is null ? [] : settings.Faults.Select(w => FaultReader.Read(w, opened.Unit.Circuit)).ToArray();
        opened.Add("command line", read.SelectMany(r => r.Findings));
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Working out what the reservoirs hold");
        var charges = new StressUnit(unit).Charges([.. read.Select(r => r.Value).OfType<Fault>()], cancellationToken);
        working.Dispose();
        if (settings.Json)
        {
            JsonOut.Write(streams, DischargeJson.From(charges, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            DischargeReport.Write(streams.OutConsole(), unit.Sheet, charges);
        }
        return ExitCode.Ran;
    }
}
