using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>diagnose</c> takes.</summary>
internal sealed class DiagnoseSettings : SheetSettings
{
    [CommandArgument(1, "[READINGS]")]
    [Description("A readings document; - reads it from standard input.")]
    public string? Readings { get; init; }

    [CommandOption("--reading <LINE>")]
    [Description("A further reading, any number of times: \"V1.6 = 62 V\", \"HT1 = 6 V ripple on slow\".")]
    public string[] Lines { get; init; } = [];

    [CommandOption("--setup <NAME-OR-KEYS>")]
    [Description("Setup of --reading lines that name none: a name, or keys such as \"mains=110V limiter=40W valves=out\".")]
    public string? Setup { get; init; }

    [CommandOption("--complaint <WORDS>")]
    [Description("The complaint in the customer's words, added to that of the document.")]
    public string? Complaint { get; init; }

    [CommandOption("--history <FILE>")]
    [Description(
        "What past jobs on this sheet came down to, a line each: \"R10 drifted up\", \"C4\"; # begins a remark. Without it, no history counts."
    )]
    public string? History { get; init; }

    [CommandOption("--age <YEARS>")]
    [Description(
        "Age of the unit; without it, from the year in the sheet. Old electrolytics, carbon resistors and contacts are suspected more."
    )]
    public double? Age { get; init; }
}
