using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow diagnose SHEET [READINGS]</summary>
internal sealed class DiagnoseCommand : Command<DiagnoseSettings>
{
    public override int Execute(CommandContext context, DiagnoseSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        if (settings.Sheet == DocumentFile.StandardInput && settings.Readings == DocumentFile.StandardInput)
        {
            throw new CannotRunException(
                "Only one document can come from standard input: name a file for the sheet or the readings."
            );
        }

        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit)
        {
            return opened.SayWrong();
        }

        var request = Request(unit, settings, streams);
        var diagnosed = Run(unit, request, streams, cancellationToken);
        opened.Add(settings.Readings ?? "readings", diagnosed.Findings);
        opened.Add("command line", diagnosed.LineFindings);
        opened.Add(settings.History ?? "history", diagnosed.HistoryFindings);
        if (diagnosed.Result is not { } result)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, DiagnosisJson.From(diagnosed, result, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            DiagnosisReport.Write(streams.OutConsole(), unit.Sheet, result);
        }
        return ExitCode.Ran;
    }

    private static DiagnoseRequest Request(BenchUnit unit, DiagnoseSettings settings, Streams streams) =>
        new()
        {
            ReadingsText = settings.Readings is { } path ? DocumentFile.Read(path, streams) : null,
            Lines = settings.Lines,
            Setup = settings.Setup,
            Complaint = settings.Complaint,
            HistoryText = settings.History is { } history ? DocumentFile.Read(history, streams) : null,
            AgeYears = settings.Age ?? unit.Sheet.AgeIn(TimeProvider.System.GetLocalNow().Year),
        };

    private static DiagnosedUnit Run(BenchUnit unit, DiagnoseRequest request, Streams streams, CancellationToken cancel)
    {
        using var working = new Working(streams, "Weighing faults against the readings");
        return new DiagnoseUnit(unit).Run(request, working, cancel);
    }
}
