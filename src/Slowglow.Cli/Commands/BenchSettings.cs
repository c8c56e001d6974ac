using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>bench</c> takes.</summary>
internal sealed class BenchSettings : CommandSettings
{
    /// <summary>The port that the bench page is known by.</summary>
    public const int UsualPort = 5080;

    [CommandArgument(0, "[JOB-OR-FOLDER]")]
    [Description(
        "The number of the job to open on, or a folder with a sheet.yaml (or folders of those), which keeps its own job book."
    )]
    public string? What { get; init; }

    [CommandOption("--port <PORT>")]
    [Description("Port to serve at on this machine; 0 takes a free one.")]
    [DefaultValue(UsualPort)]
    public int Port { get; init; } = UsualPort;

    [CommandOption("--data <FILE>")]
    [Description("The shop's file; it is made when it is not there. Default: in your own data folder.")]
    public string? Data { get; init; }

    [CommandOption("--postgres <CONNECTION>")]
    [Description("Keep the shop in a PostgreSQL database instead: \"Host=...;Database=...;Username=...\".")]
    public string? Postgres { get; init; }

    [CommandOption("--no-browser")]
    [Description("Only serve the page; do not open it.")]
    public bool NoBrowser { get; init; }

    [CommandOption("--empty")]
    [Description("Begin an empty shop: without the invented jobs, bins and invoices of the demo.")]
    public bool Empty { get; init; }

    [CommandOption("--json")]
    [Description("Say the address as JSON once the page answers.")]
    public bool Json { get; init; }
}
