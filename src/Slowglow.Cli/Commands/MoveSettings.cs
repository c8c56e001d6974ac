using System.ComponentModel;
using Slowglow.Web.Hosting;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>move</c> takes.</summary>
internal sealed class MoveSettings : CommandSettings
{
    [CommandArgument(0, "<CONNECTION>")]
    [Description("An empty PostgreSQL database: \"Host=...;Database=...;Username=...\".")]
    public string Connection { get; init; } = "";

    [CommandOption("--data <FILE>")]
    [Description("The shop's file. Default: in your own data folder.")]
    public string? Data { get; init; }

    [CommandOption("--json")]
    [Description("Answer as JSON.")]
    public bool Json { get; init; }

    public string ShopPath => Path.GetFullPath(Data ?? BenchOptions.DefaultDatabasePath);
}
