using Slowglow.Power;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The cautions that every answer about the supply ends with.</summary>
internal static class CautionLines
{
    public static void Write(IAnsiConsole console)
    {
        console.Heading("Caution");
        foreach (var caution in Cautions.Always)
        {
            console.Say(caution);
        }
    }
}
