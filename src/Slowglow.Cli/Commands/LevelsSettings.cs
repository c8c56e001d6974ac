using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>levels</c> takes.</summary>
internal sealed class LevelsSettings : SetupSettings
{
    [CommandOption("--fault <FAULT>")]
    [Description("A fault to put in, any number of times: \"R5 open\", \"R5 x5\", \"C4 leaky 470k\".")]
    public string[] Faults { get; init; } = [];
}
