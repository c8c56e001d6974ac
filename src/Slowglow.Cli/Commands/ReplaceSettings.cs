using System.ComponentModel;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>replace</c> takes.</summary>
internal sealed class ReplaceSettings : SheetSettings
{
    [CommandArgument(1, "<PART-WITH-ANOTHER>")]
    [Description("\"R5 with 120k 1W\", \"V1 with 12AU7\", \"C1 with 100u 450V\".")]
    public string Words { get; init; } = "";
}
