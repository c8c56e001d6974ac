using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>offers</c> takes.</summary>
internal sealed class OffersSettings : SheetSettings
{
    [CommandArgument(1, "<TRANSFORMER>")]
    [Description("Designator of the one to be replaced: T1.")]
    public string Transformer { get; init; } = "";

    [CommandOption("--offer <LINE>")]
    [Description(
        "One to six: \"new toroid: 230V; 250V 120mA; 6.3V 3A; 60VA; price 45; freight 9; tax 20%; weeks 2; fixing one bolt; size 96x80x75mm; holes 80x64mm\"."
    )]
    public string[] Offers { get; init; } = [];

    [CommandOption("--place <SIZE-AND-HOLES>")]
    [Description("Room where the old one stood, width, depth and height, and its holes: \"size 100x85x90mm; holes 80x64mm\".")]
    public string Place { get; init; } = "";
}
