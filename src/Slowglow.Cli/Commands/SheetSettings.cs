using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What every command on a sheet takes.</summary>
internal class SheetSettings : CommandSettings
{
    [CommandArgument(0, "<SHEET>")]
    [Description("The circuit sheet; - reads it from standard input.")]
    public string Sheet { get; init; } = "";

    [CommandOption("--json")]
    [Description("Answer as JSON, in base units (V, A, ohm). Shapes: docs/command.md.")]
    public bool Json { get; init; }
}
