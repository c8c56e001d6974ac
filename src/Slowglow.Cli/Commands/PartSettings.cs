using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>A sheet and one of its parts.</summary>
internal sealed class PartSettings : SheetSettings
{
    [CommandArgument(1, "<PART>")]
    [Description("Designator of the part that has died: T1, F1, D2.")]
    public string Part { get; init; } = "";
}
