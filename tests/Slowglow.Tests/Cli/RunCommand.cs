using Slowglow.Cli;
using Slowglow.Cli.Desk;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Cli;

/// <summary>Runs the command in this process, as if its output went to a file.</summary>
internal static class RunCommand
{
    public static Task<CommandRun> With(params string[] words) => WithInput("", words);

    public static async Task<CommandRun> WithInput(string input, params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var streams = new Streams(new StringReader(input), output, error, OutIsTerminal: false, ErrorIsTerminal: false);
        var code = await CommandLine.RunAsync(words, streams, TestContext.Current.CancellationToken);
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>The same with relative paths taken from the root of the repository.</summary>
    public static Task<CommandRun> InRoot(params string[] words) =>
        With([.. words.Select(w => File.Exists(Path.Combine(Repository.Root, w)) ? Path.Combine(Repository.Root, w) : w)]);
}
