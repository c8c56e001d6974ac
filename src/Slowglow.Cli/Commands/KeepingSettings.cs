using System.ComponentModel;
using Slowglow.Web.Hosting;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>backup</c>, <c>restore</c> and <c>export</c> take.</summary>
internal sealed class KeepingSettings : CommandSettings
{
    [CommandArgument(0, "<FILE-OR-FOLDER>")]
    [Description("The backup's file, or the folder to export into.")]
    public string Where { get; init; } = "";

    [CommandOption("--data <FILE>")]
    [Description("The shop's file. Default: in your own data folder.")]
    public string? Data { get; init; }

    [CommandOption("--json")]
    [Description("Answer as JSON.")]
    public bool Json { get; init; }

    public string ShopPath => Path.GetFullPath(Data ?? BenchOptions.DefaultDatabasePath);
}
