using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>rewind</c> takes.</summary>
internal sealed class RewindSettings : SheetSettings
{
    [CommandArgument(1, "<TRANSFORMER>")]
    [Description("Its designator: T1.")]
    public string Transformer { get; init; } = "";

    [CommandOption("--measured <LINE-OR-FILE>")]
    [Description(
        "What could be measured on the dead one, any number of times: \"core = EI96\", \"P = 16 ohm\", \"P/HT = 0.94\"; or a file of such lines."
    )]
    public string[] Measured { get; init; } = [];

    [CommandOption("--core <SIZE>")]
    [Description("Core to wind on, with its stack: \"EI96 45mm\". Default: the measured one, or the smallest that does.")]
    public string? Core { get; init; }

    [CommandOption("--mains <VOLTS>")]
    [Description("Mains voltages to strap for: \"100,120,220,230,240\". Default: the primary as drawn.")]
    public string? Mains { get; init; }

    [CommandOption("--class <LETTER>")]
    [Description("Insulation class: A, E, B, F or H. Default: B.")]
    public string Class { get; init; } = "B";

    [CommandOption("--iron <QUALITY>")]
    [Description("ordinary, good or oriented. Default: good (non-oriented).")]
    public string Iron { get; init; } = "good";

    [CommandOption("--wound <LINE-OR-FILE>")]
    [Description("What was measured on the part that came back from the winder, in the same words as --measured.")]
    public string[] Wound { get; init; } = [];
}
