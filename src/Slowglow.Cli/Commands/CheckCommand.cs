using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Sheets;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow check SHEET</summary>
internal sealed class CheckCommand : Command<SheetSettings>
{
    public override int Execute(CommandContext context, SheetSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var check = new CheckSheet().Run(DocumentFile.Read(settings.Sheet, streams));
        if (settings.Json)
        {
            JsonOut.Write(streams, CheckJson.From(check, settings.Sheet));
        }
        else if (check.Usable)
        {
            CheckReport.Write(streams.OutConsole(), check, settings.Sheet);
        }
        else
        {
            var findings = check.Findings.Select(f => new DocumentFinding(settings.Sheet, f));
            FindingLines.Write(streams.ErrorConsole(), findings, Severity.Note);
        }
        return check.Usable ? ExitCode.Ran : ExitCode.DocumentsWrong;
    }
}
