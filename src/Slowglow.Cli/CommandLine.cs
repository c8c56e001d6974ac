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
            .AddCommand<DrawCommand>("draw")
            .WithData(streams)
            .WithDescription("Draw the circuit from its sheet, with what every point should read; nothing is placed by hand.")
            .WithExample("draw", "combo.yaml", "--out", "combo.svg", "--resistors", "zigzag");
        ConfigureSupply(config, streams);
        config
            .AddCommand<RehearseCommand>("rehearse")
            .WithData(streams)
            .WithDescription("Hide faults in units of a sheet and see how the program, or a plainer way of working, finds them.")
            .WithExample("rehearse", "combo.yaml", "--cases", "50")
            .WithExample("rehearse", "combo.yaml", "--by", "halving", "--draw", "uniform");
        config
            .AddCommand<BenchCommand>("bench")
            .WithData(streams)
            .WithDescription("Serve the bench page: jobs, readings, suspects, what to measure next.")
            .WithExample("bench");
        ConfigureKeeping(config, streams);
    }

    /// <summary>Commands that keep the shop's records safe.</summary>
    private static void ConfigureKeeping(IConfigurator config, Streams streams)
    {
        config
            .AddCommand<BackupCommand>("backup")
            .WithData(streams)
            .WithDescription("Copy the whole shop into one file, while it is in use, and read the copy again.")
            .WithExample("backup", "shop-monday.backup");
        config
            .AddCommand<RestoreCommand>("restore")
            .WithData(streams)
            .WithDescription("Put a backup in the place of the shop; what stood there is kept beside it.")
            .WithExample("restore", "shop-monday.backup");
        config
            .AddCommand<MoveCommand>("move")
            .WithData(streams)
            .WithDescription("Carry the whole shop over into an empty PostgreSQL database, and compare every row.")
            .WithExample("move", "\"Host=/run/postgresql;Database=shop;Username=bench\"");
        config
            .AddCommand<ForgetPinsCommand>("forget-pins")
            .WithData(streams)
            .WithDescription("Take every PIN away, when an owner has forgotten it.")
            .WithExample("forget-pins");
        config
            .AddCommand<ExportCommand>("export")
            .WithData(streams)
            .WithDescription("Write everything as JSON, and papers and money as tables for an accountant.")
            .WithExample("export", "for-the-accountant");
    }

    /// <summary>Commands about the supply: power-up, what is stored, what parts stand, what killed one, what replaces it.</summary>
    private static void ConfigureSupply(IConfigurator config, Streams streams)
    {
        config
            .AddCommand<PowerUpCommand>("powerup")
            .WithData(streams)
            .WithDescription(
                "Steps of a first power-up: what to set, what each point reads then, when to stop, what it means if not."
            )
            .WithExample("powerup", "combo.yaml", "--lamp", "60W", "--valves", "out");
        config
            .AddCommand<DischargeCommand>("discharge")
            .WithData(streams)
            .WithDescription("What the reservoirs hold after switch-off, for how long, and what to discharge them with.")
            .WithExample("discharge", "combo.yaml", "--fault", "\"R1 open\"");
        config
            .AddCommand<StressCommand>("stress")
            .WithData(streams)
            .WithDescription("What every part stands at the worst, against its rating or the rating to fit.")
            .WithExample("stress", "combo.yaml");
        config
            .AddCommand<ReplaceCommand>("replace")
            .WithData(streams)
            .WithDescription("Try another part: what moves, what comes over its rating.")
            .WithExample("replace", "combo.yaml", "\"R5 with 120k 1W\"");
        config
            .AddCommand<OverloadCommand>("overload")
            .WithData(streams)
            .WithDescription("Which faults of other parts overload one that has died, by how much and how fast.")
            .WithExample("overload", "combo.yaml", "T1");
        config
            .AddCommand<OffersCommand>("offers")
            .WithData(streams)
            .WithDescription("Compare transformers to be had by what the rails would be with each.")
            .WithExample("offers", "combo.yaml", "T1", "--offer", "\"toroid: 230V; 250V 250mA; 6.3V 3A; price 45; weeks 2\"");
        config
            .AddCommand<RewindCommand>("rewind")
            .WithData(streams)
            .WithDescription("Specify the transformer that replaces one of the unit, from what its windings do in the circuit.")
            .WithExample("rewind", "combo.yaml", "T1", "--measured", "\"core = EI96\"", "--measured", "\"stack = 45 mm\"");
    }
}
