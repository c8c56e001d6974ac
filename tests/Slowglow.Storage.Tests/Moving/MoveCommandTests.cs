using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Tests.Counter;

namespace Slowglow.Storage.Tests.Moving;

/// <summary>The command itself, in a process of its own, as the owner of a shop types it.</summary>
public sealed class MoveCommandTests(PostgresServer server)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Built beside this project, in the same configuration.</summary>
    private static string Command
    {
        get
        {
            var here = new DirectoryInfo(AppContext.BaseDirectory);
            var root = here.Parent!.Parent!.Parent!.Parent!.Parent!.FullName;
            return Path.Combine(root, "src", "Slowglow.Cli", "bin", here.Parent.Name, here.Name, "slowglow.dll");
        }
    }

    [Fact]
    public async Task Shop_is_moved_once_and_the_second_time_is_refused()
    {
        await using var file = await SqliteUnderTest.StartAsync();
        var job = await new ShopFloor(file.Shop).BookAsync();
        var connection = await server.NewDatabaseAsync();

        var (code, said, _) = await RunAsync("move", connection, "--data", file.FilePath);

        Assert.Equal(0, code);
        Assert.Contains("jobs: 1 rows, read again on both sides: the same", said, StringComparison.Ordinal);
        Assert.Contains($"{file.FilePath} stays as it was", said, StringComparison.Ordinal);
        await using var moved = new PostgresShop(connection).CreateDbContext();
        Assert.Equal(job, (await moved.Jobs.SingleAsync(Cancel)).Number);
        var (again, _, why) = await RunAsync("move", connection, "--data", file.FilePath);
        Assert.Equal(1, again);
        Assert.Contains("holds a shop already", why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense", "The connection cannot be read")]
    [InlineData("Host=/nowhere;Port=not a port", "The connection cannot be read")]
    [InlineData("Database=shop", "The connection cannot be read")]
    [InlineData("Host=/nowhere;Database=shop;Username=bench", "cannot be reached or written to")]
    public async Task Connection_that_leads_nowhere_gets_a_sentence(string connection, string sentence)
    {
        await using var file = await SqliteUnderTest.StartAsync();
        var (code, _, error) = await RunAsync("move", connection, "--data", file.FilePath);
        Assert.Equal(1, code);
        Assert.Contains(sentence, error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", error, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Said, string Error)> RunAsync(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in (string[])["exec", Command, .. words])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var (said, error) = (process.StandardOutput.ReadToEndAsync(Cancel), process.StandardError.ReadToEndAsync(Cancel));
        await process.WaitForExitAsync(Cancel);
        return (process.ExitCode, await said, await error);
    }
}
