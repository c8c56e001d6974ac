using System.Net;
using Slowglow.Web.Hosting;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class HostTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Styles_and_scripts_are_served_from_any_working_folder()
    {
        var folder = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Path.GetTempPath();
        try
        {
            await using var bench = await BenchUnderTest.StartAsync([]);
            using var client = new HttpClient();
            foreach (var file in new[] { "assets/bench.css", "assets/bench.js", "assets/mark.svg", "_framework/blazor.web.js" })
            {
                var body = await client.GetStringAsync($"{bench.Url}/{file}", Cancel);
                Assert.True(body.Length > 200, $"{file} is empty");
            }
        }
        finally
        {
            Environment.CurrentDirectory = folder;
        }
    }

    [Theory]
    [InlineData("http://0.0.0.0:5080")]
    [InlineData("http://192.168.1.20:5080")]
    [InlineData("http://+:5080")]
    [InlineData("five thousand and eighty")]
    public async Task Page_is_served_on_this_machine_only(string url)
    {
        var findings = await BenchHost.RunAsync(new BenchOptions { Url = url, DatabasePath = "never-made.db" }, Cancel);

        var finding = Assert.Single(findings);
        Assert.Equal($"The page cannot be served at {url}.", finding.Text);
        Assert.False(File.Exists("never-made.db"));
    }

    [Fact]
    public async Task Taken_port_is_said_in_a_sentence()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);

        var findings = await BenchHost.RunAsync(
            new BenchOptions
            {
                Url = bench.Url,
                DatabasePath = bench.DatabasePath,
                DemoFolders = [],
            },
            Cancel
        );

        Assert.Equal($"Something else answers at {bench.Url} already.", Assert.Single(findings).Text);
    }

    [Fact]
    public async Task File_that_is_no_database_is_said_in_a_sentence()
    {
        var path = Path.GetTempFileName();
        await File.WriteAllTextAsync(path, "shopping: solder, wick, two fuses, and something for tea", Cancel);

        var findings = await BenchHost.RunAsync(
            new BenchOptions
            {
                Url = "http://127.0.0.1:0",
                DatabasePath = path,
                DemoFolders = [],
            },
            Cancel
        );

        Assert.Equal($"The shop's file {path} cannot be opened.", Assert.Single(findings).Text);
        File.Delete(path);
    }

    [Fact]
    public async Task Another_name_for_this_machine_is_refused()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, bench.Url + "/jobs");
        request.Headers.Host = "elsewhere.example";

        var response = await client.SendAsync(request, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }
}
