using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>powerup</c> takes.</summary>
internal sealed class PowerUpSettings : SheetSettings
{
    [CommandOption("--lamp <WATTS>")]
    [Description(
        "The limiter lamp at hand, of the mains voltage: 60W; two side by side: 60W+60W. Default: the one that suits the unit."
    )]
    public string? Lamp { get; init; }

    [CommandOption("--valves <OUT-OR-IN>")]
    [Description("Start with the valves pulled (out) or in their sockets (in). Default: out.")]
    public string Valves { get; init; } = "out";
}
