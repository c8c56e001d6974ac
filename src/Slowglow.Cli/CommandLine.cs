using Slowglow.Cli.Commands;
using Slowglow.Cli.Desk;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Slowglow.Cli;

/// <summary>The command as a whole: words in, exit code out.</summary>
public static class CommandLine
{
    /// <summary>Runs one command. Never throws: what goes wrong is said on the error stream.</summary>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Streams streams, CancellationToken cancel = default)
    {
        var app = new CommandApp();
        app.Configure(config => Configure(config, streams));
        // The parser takes a lone dash for an option without a name.
        var words = args.Select(a => a == "-" ? DocumentFile.StandardInput : a);
        return await app.RunAsync(args.Count == 0 ? ["--help"] : words, cancel);
    }

    private static void Configure(IConfigurator config, Streams streams)
    {
        config.SetApplicationName("slowglow");
        config.SetApplicationVersion(typeof(CommandLine).Assembly.GetName().Version?.ToString(3) ?? "0");
        config.ConfigureConsole(streams.OutConsole());
        config.UseStrictParsing();
        config.SetExceptionHandler((problem, _) => Problems.Say(problem, streams));

        config
            .AddCommand<CheckCommand>("check")
            .WithData(streams)
            .WithDescription("Read a sheet, check its circuit, list what had to be assumed.")
            .WithExample("check", "combo.yaml");
        config
            .AddCommand<ExpectCommand>("expect")
            .WithData(streams)
            .WithDescription("What every test point should read in a healthy unit, and within what band.")
            .WithExample("expect", "combo.yaml", "--setup", "\"mains=110V limiter=40W valves=out\"");
        config
            .AddCommand<LevelsCommand>("levels")
            .WithData(streams)
            .WithDescription("Level, clean headroom and hum of every channel, healthy or with a fault.")
            .WithExample("levels", "combo.yaml", "--fault", "\"R5 x5\"");
        config
            .AddCommand<DiagnoseCommand>("diagnose")
            .WithData(streams)
            .WithDescription("Which parts, failed in which way, explain the readings; and what to measure next.")
            .WithExample("diagnose", "combo.yaml", "readings.yaml")
            .WithExample("diagnose", "combo.yaml", "--reading", "\"V1.6 = 62 V\"", "--complaint", "\"thin and gritty\"");
        config
            .AddCommand<BenchCommand>("bench")
            .WithData(streams)
            .WithDescription("Serve the bench page: jobs, readings, suspects, what to measure next.")
            .WithExample("bench");
    }
}
