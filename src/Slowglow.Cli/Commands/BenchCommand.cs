using System.Globalization;
using Slowglow.Bench.Jobs.Demo;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Web.Hosting;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow bench [JOB-OR-FOLDER]</summary>
internal sealed class BenchCommand : AsyncCommand<BenchSettings>
{
    private const string SheetName = "sheet.yaml";
    private const string BookName = "shop.db";

    public override async Task<int> ExecuteAsync(
        CommandContext context,
        BenchSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        var options = Options(settings, streams);
        using var working = new Working(streams, "Laying out the bench");
        options = options with { Ready = address => Announce(address, options, settings, streams, working) };
        var findings = await BenchHost.RunAsync(options, cancellationToken);
        FindingLines.Write(
            streams.ErrorConsole(),
            findings.Select(f => new DocumentFinding("bench", f)),
            Sheets.Severity.Warning
        );
        return findings.Count == 0 ? ExitCode.Ran : ExitCode.CouldNotRun;
    }

    private static BenchOptions Options(BenchSettings settings, Streams streams)
    {
        if (settings.Port is < 0 or > 65535)
        {
            throw new CannotRunException(
                $"{settings.Port} is no port: it would be 1 to 65535, usually {BenchSettings.UsualPort}."
            );
        }

        var options = new BenchOptions
        {
            Url = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{settings.Port}"),
            DatabasePath = settings.Data,
            PostgresConnection = settings.Postgres,
            OpenBrowser = !settings.NoBrowser && streams.OutIsTerminal,
        };
        return settings.What is { } what ? Open(what, options)
            : settings.Empty ? options with { DemoFolders = [] }
            : options;
    }

    private static BenchOptions Open(string what, BenchOptions options)
    {
        if (int.TryParse(what, NumberStyles.None, CultureInfo.InvariantCulture, out var job))
        {
            return options with { Job = job };
        }

        if (!Directory.Exists(what))
        {
            throw new CannotRunException($"{what} is neither the number of a job nor a folder.");
        }

        var folders = File.Exists(Path.Combine(what, SheetName)) ? [what] : DemoFolders.Within(what);
        return folders.Count == 0
            ? throw new CannotRunException($"{what} holds no {SheetName}, nor do the folders in it.")
            : options with
            {
                DemoFolders = folders,
                DatabasePath = options.DatabasePath ?? Path.Combine(what, BookName),
            };
    }

    private static void Announce(string address, BenchOptions options, BenchSettings settings, Streams streams, Working working)
    {
        working.Dispose();
        var file = Path.GetFullPath(options.DatabasePath ?? BenchOptions.DefaultDatabasePath);
        if (settings.Json)
        {
            JsonOut.Write(streams, new BenchJson(address, file));
        }
        else
        {
            streams.Out.WriteLine($"The bench page is at {address} (Ctrl+C stops it). Jobs are kept in {file}.");
        }
        streams.Out.Flush();
    }
}
