using Xunit;

namespace Slowglow.Tests.Cli;

/// <summary>Files that are no documents, and words that are no commands: exit code 1 and plain words on the error stream.</summary>
public sealed class DocumentsThatCannotBeReadTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-cli-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_missing_file_is_named()
    {
        var path = Path.Combine(folder, "combo.yaml");
        await Refused($"There is no file {path}.", "check", path);
    }

    [Fact]
    public async Task A_missing_file_is_answered_with_what_lies_beside_it()
    {
        await File.WriteAllTextAsync(Path.Combine(folder, "kombo.yaml"), "sheet: 1", TestContext.Current.CancellationToken);
        var run = await RunCommand.With("check", Path.Combine(folder, "combo.yaml"));
        Assert.Equal(1, run.Code);
        Assert.Contains("kombo.yaml", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_is_no_document() =>
        await Refused($"{folder} is a folder. Name the document itself.", "expect", folder);

    [Fact]
    public async Task A_binary_file_is_no_document()
    {
        var path = await Write("picture.png", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x00, 0xFF]);
        await Refused($"{path} is not a text file (UTF-8). A sheet or readings document is plain text.", "levels", path);
    }

    [Fact]
    public async Task A_file_of_zeros_is_no_document()
    {
        var path = await Write("zeros", new byte[64]);
        await Refused($"{path} is not a text file. A sheet or readings document is plain text.", "check", path);
    }

    [Fact]
    public async Task A_huge_file_is_not_swallowed()
    {
        var path = await Write("huge.yaml", Enumerable.Repeat((byte)'#', 1_000_001).ToArray());
        await Refused($"{path} is too large: a document may have up to 1,000,000 characters.", "diagnose", path);
    }

    [Theory]
    [InlineData("Unknown command 'chekc'", "chekc", "x.yaml")]
    [InlineData("Unknown option 'jsn'", "check", "x.yaml", "--jsn")]
    [InlineData("missing required argument 'SHEET'", "diagnose")]
    [InlineData("Only one document can come from standard input", "diagnose", "-", "-")]
    public async Task A_slip_of_the_keyboard_is_explained(string says, params string[] words)
    {
        var run = await RunCommand.With(words);
        Assert.Equal(1, run.Code);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Out);
    }

    [Fact]
    public async Task Without_words_it_shows_what_it_can_do()
    {
        var run = await RunCommand.With();
        Assert.Equal(0, run.Code);
        Assert.All(
            ["check", "expect", "levels", "diagnose", "bench"],
            c => Assert.Contains(c, run.Out, StringComparison.Ordinal)
        );
    }

    private static async Task Refused(string says, params string[] words)
    {
        var run = await RunCommand.With(words);
        Assert.Equal((1, says + Environment.NewLine, ""), (run.Code, run.Error, run.Out));
    }

    private async Task<string> Write(string name, byte[] bytes)
    {
        var path = Path.Combine(folder, name);
        await File.WriteAllBytesAsync(path, bytes, TestContext.Current.CancellationToken);
        return path;
    }
}
