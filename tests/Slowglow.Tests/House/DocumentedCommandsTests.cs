using System.Text.RegularExpressions;
using Slowglow.Tests.Cli;
using Xunit;

namespace Slowglow.Tests.House;

/// <summary>What the documentation tells people to type works.</summary>
public partial class DocumentedCommandsTests
{
    private static readonly string[] Pages = ["README.md", "docs/command.md"];

    /// <summary>Without `bench`, which serves until it is stopped: the browser tests try that.</summary>
    public static TheoryData<string> Commands() =>
        [.. Typed().Where(l => !l.StartsWith("slowglow bench", StringComparison.Ordinal))];

    public static TheoryData<string> Scripts() =>
        [
            .. Pages
                .SelectMany(Lines)
                .Where(l => l.StartsWith("./", StringComparison.Ordinal))
                .Select(l => l.Split(' ')[0])
                .Distinct(),
        ];

    [Fact]
    public void The_front_page_names_the_run_and_the_test_command()
    {
        var lines = Lines("README.md").ToArray();
        Assert.Contains("./run.sh", lines);
        Assert.Contains("./test.sh", lines);
    }

    [Theory]
    [MemberData(nameof(Scripts))]
    public void A_script_is_there_and_may_be_run(string script)
    {
        var path = Path.Combine(Repository.Root, script);
        Assert.True(File.Exists(path), $"{script} is missing");
        if (!OperatingSystem.IsWindows())
        {
            Assert.True(File.GetUnixFileMode(path).HasFlag(UnixFileMode.UserExecute), $"{script} is not executable");
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task A_command_runs(string command)
    {
        var words = Words().Matches(command).Select(m => m.Value.Trim('"')).Skip(1);
        var run = await RunCommand.InRoot([.. words]);
        Assert.True(run.Code == 0, $"{command}\nexit {run.Code}\n{run.Error}");
        Assert.NotEqual("", run.Out);
    }

    private static IEnumerable<string> Typed() =>
        Pages.SelectMany(Lines).Where(l => l.StartsWith("slowglow ", StringComparison.Ordinal)).Distinct();

    /// <summary>Lines of the shell blocks of a page.</summary>
    private static IEnumerable<string> Lines(string page)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, page));
        return ShellBlocks()
            .Matches(text)
            .SelectMany(m => m.Groups["body"].Value.Split('\n'))
            .Select(l => l.Split(" #")[0].Trim())
            .Where(l => l.Length > 0);
    }

    [GeneratedRegex(@"```sh\n(?<body>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlocks();

    [GeneratedRegex(@"""[^""]*""|\S+")]
    private static partial Regex Words();
}
