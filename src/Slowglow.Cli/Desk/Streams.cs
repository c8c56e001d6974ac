using System.Text;
using Spectre.Console;

namespace Slowglow.Cli.Desk;

/// <summary>Where the command reads and writes. Tests hand in their own.</summary>
/// <param name="OutIsTerminal">False when output goes to a file or a pipe: then no escape codes.</param>
/// <param name="ErrorIsTerminal">The same of the error stream.</param>
public sealed record Streams(TextReader In, TextWriter Out, TextWriter Error, bool OutIsTerminal, bool ErrorIsTerminal)
{
    /// <summary>Width of tables that go to a file or a pipe, in characters.</summary>
    private const int PlainWidth = 160;

    /// <summary>The process's own.</summary>
    public static Streams Console()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        System.Console.OutputEncoding = utf8;
        var input = new StreamReader(System.Console.OpenStandardInput(), new UTF8Encoding(false, throwOnInvalidBytes: true));
        return new(
            input,
            System.Console.Out,
            System.Console.Error,
            !System.Console.IsOutputRedirected,
            !System.Console.IsErrorRedirected
        );
    }

    /// <summary>For tables and text on the output.</summary>
    public IAnsiConsole OutConsole() => Create(Out, OutIsTerminal);

    /// <summary>For findings and problems on the error stream.</summary>
    public IAnsiConsole ErrorConsole() => Create(Error, ErrorIsTerminal);

    private static IAnsiConsole Create(TextWriter writer, bool terminal)
    {
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = terminal ? AnsiSupport.Detect : AnsiSupport.No,
                ColorSystem = terminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(writer),
            }
        );
        if (!terminal)
        {
            console.Profile.Width = PlainWidth;
        }
        return console;
    }
}
