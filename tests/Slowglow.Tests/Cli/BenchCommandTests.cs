using System.Text.Json.Nodes;
using Slowglow.Cli;
using Slowglow.Cli.Desk;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Cli;

public sealed class BenchCommandTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-bench-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task It_serves_the_page_and_says_where_until_it_is_stopped()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var streams = new Streams(TextReader.Null, TextWriter.Synchronized(output), error, false, false);
        string[] words = ["bench", "--port", "0", "--data", Path.Combine(folder, "shop.db"), "--json"];
        var running = CommandLine.RunAsync(words, streams, stop.Token);

        var started = DateTime.UtcNow;
        while (!output.ToString().Contains('}') && DateTime.UtcNow - started < Patience && !running.IsCompleted)
        {
            await Task.Delay(50, stop.Token);
        }

        using var visitor = new HttpClient { Timeout = Patience };
        var page = await visitor.GetStringAsync(JsonNode.Parse(output.ToString())!["url"]!.GetValue<string>(), stop.Token);
        Assert.Contains("<html", page, StringComparison.OrdinalIgnoreCase);

        await stop.CancelAsync();
        Assert.Equal(0, await running);
    }

    [Theory]
    [InlineData("nowhere", "nowhere is neither the number of a job nor a folder.")]
    [InlineData("docs", "holds no sheet.yaml, nor do the folders in it.")]
    public async Task A_place_without_a_sheet_is_refused(string what, string says)
    {
        var path = what == "docs" ? Path.Combine(Repository.Root, what) : what;
        var run = await RunCommand.With("bench", path);
        Assert.Equal(1, run.Code);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_that_is_none_is_refused()
    {
        var run = await RunCommand.With("bench", "--port", "99999");
        Assert.Equal((1, "99999 is no port: it would be 1 to 65535, usually 5080." + Environment.NewLine), (run.Code, run.Error));
    }
}
