using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>draw</c> takes.</summary>
internal sealed class DrawSettings : SetupSettings
{
    [CommandOption("--out <FILE>")]
    [Description("Where to put the SVG. Default: the output.")]
    public string? Out { get; init; }

    [CommandOption("--resistors <SYMBOL>")]
    [Description("box or zigzag. Default: box.")]
    public string Resistors { get; init; } = "box";
}
