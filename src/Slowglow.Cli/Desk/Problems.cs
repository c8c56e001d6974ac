using Spectre.Console.Cli;

namespace Slowglow.Cli.Desk;

/// <summary>Says on the error stream why a command could not run.</summary>
internal static class Problems
{
    /// <summary>Set to anything, this environment variable shows the program's inner details of a mistake of its own.</summary>
    private const string DetailsVariable = "SLOWGLOW_DETAILS";

    public static int Say(Exception problem, Streams streams)
    {
        switch (problem)
        {
            case CannotRunException:
                streams.Error.WriteLine(problem.Message);
                break;
            case CommandAppException:
                streams.Error.WriteLine(problem.Message.TrimEnd('.') + ". `slowglow --help` lists commands and options.");
                break;
            case OperationCanceledException:
                streams.Error.WriteLine("Stopped.");
                break;
            default:
                SayOwnMistake(problem, streams.Error);
                break;
        }
        return ExitCode.CouldNotRun;
    }

    private static void SayOwnMistake(Exception problem, TextWriter error)
    {
        error.WriteLine("The program itself made a mistake; your documents are not to blame, and nothing was changed.");
        if (Environment.GetEnvironmentVariable(DetailsVariable) is { Length: > 0 })
        {
            error.WriteLine(problem);
        }
        else
        {
            error.WriteLine($"Run it again with {DetailsVariable}=1 in the environment and report what it prints.");
        }
    }
}
