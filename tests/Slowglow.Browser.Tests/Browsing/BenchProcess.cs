using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The command, serving the page from a process of its own that can be killed.</summary>
internal sealed partial class BenchProcess : IAsyncDisposable
{
    private readonly Process process;

    private BenchProcess(Process process, string url)
    {
        this.process = process;
        Url = url;
    }

    public string Url { get; }

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

    public int Port => new Uri(Url).Port;

    /// <summary>Starts <c>slowglow bench</c> and waits until it says its address.</summary>
    public static async Task<BenchProcess> StartAsync(string databasePath, int port)
    {
        // A signal that a shell ignores stays ignored in what it becomes: a full disk is an error to be answered, not an end.
        var start = new ProcessStartInfo("sh")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            // Anywhere but the program's folder: the page must not depend on where one stands.
            WorkingDirectory = Path.GetTempPath(),
        };
        string[] before = ["-c", "trap '' XFSZ; exec dotnet \"$@\"", "sh"];
        string[] words = ["exec", Command, "bench", "--port", $"{port}", "--data", databasePath, "--no-browser"];
        foreach (var word in (string[])[.. before, .. words])
        {
            start.ArgumentList.Add(word);
        }

        var process = Process.Start(start)!;
        _ = process.StandardError.ReadToEndAsync();
        while (await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
        {
            if (Address().Match(line) is { Success: true } found)
            {
                return new(process, found.Value);
            }
        }

        throw new InvalidOperationException("The command ended without saying an address.");
    }

    /// <summary>Takes away all room for files, or gives it back: what a full disk is to the program.</summary>
    public async Task LimitAsync(bool full)
    {
        var start = new ProcessStartInfo("prlimit");
        foreach (var word in new[] { "--pid", $"{process.Id}", full ? "--fsize=1:unlimited" : "--fsize=unlimited:unlimited" })
        {
            start.ArgumentList.Add(word);
        }

        using var set = Process.Start(start)!;
        await set.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, set.ExitCode);
    }

    /// <summary>As a power cut would end it.</summary>
    public async Task KillAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            await KillAsync();
        }

        process.Dispose();
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Address();
}
