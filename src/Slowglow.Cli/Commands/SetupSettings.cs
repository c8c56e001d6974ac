using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What commands that ask worlds take besides.</summary>
internal class SetupSettings : SheetSettings
{
    [CommandOption("--setup <NAME-OR-KEYS>")]
    [Description("How the bench stands: a name, or keys such as \"mains=110V limiter=40W valves=out\". Default: bench.")]
    public string[] Setups { get; init; } = [];

    [CommandOption("--readings <FILE>")]
    [Description("A readings document whose setups --setup may name.")]
    public string? Readings { get; init; }
}
