using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>A sheet with faults in it.</summary>
internal sealed class FaultedSettings : SheetSettings
{
    [CommandOption("--fault <FAULT>")]
    [Description("A fault to put in, any number of times: \"R1 open\", \"C1 leaky 47k\".")]
    public string[] Faults { get; init; } = [];
}
