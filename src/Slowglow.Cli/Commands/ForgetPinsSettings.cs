using System.ComponentModel;
using Slowglow.Web.Hosting;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>forget-pins</c> takes.</summary>
internal sealed class ForgetPinsSettings : CommandSettings
{
    [CommandOption("--data <FILE>")]
    [Description("The shop's file. Default: in your own data folder.")]
    public string? Data { get; init; }

    [CommandOption("--postgres <CONNECTION>")]
    [Description("The shop is in a PostgreSQL database instead: \"Host=...;Database=...;Username=...\".")]
    public string? Postgres { get; init; }

    public string ShopPath => Path.GetFullPath(Data ?? BenchOptions.DefaultDatabasePath);
}
