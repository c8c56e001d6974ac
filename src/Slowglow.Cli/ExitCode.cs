namespace Slowglow.Cli;

/// <summary>What the shell is told.</summary>
internal static class ExitCode
{
    /// <summary>The question was answered (whatever the answer).</summary>
    public const int Ran = 0;

    /// <summary>The command could not do its work: a missing file, a wrong option, or a mistake of the program's own.</summary>
    public const int CouldNotRun = 1;

    /// <summary>A document is wrong; the findings say where.</summary>
    public const int DocumentsWrong = 2;
}
