using System.Diagnostics;

[assembly: AssemblyFixture(typeof(Slowglow.Storage.Tests.PostgresServer))]

namespace Slowglow.Storage.Tests;

/// <summary>
/// A real PostgreSQL of its own under a temporary folder, spoken to by a socket in it: Debian's package. Started once for
/// all tests, by the first that asks: a process that is killed before it asks leaves no server behind.
/// </summary>
public sealed class PostgresServer : IAsyncDisposable
{
    private readonly Lazy<Task> started;
    private string folder = "";
    private int databases;

    public PostgresServer() => started = new Lazy<Task>(StartAsync);

    private string Data => Path.Combine(folder, "data");

    /// <summary>Newest version that Debian has installed.</summary>
    private static string Programs =>
        Directory.Exists("/usr/lib/postgresql")
            ? Directory
                .GetDirectories("/usr/lib/postgresql")
                .OrderBy(d => int.TryParse(Path.GetFileName(d), out var v) ? v : 0)
                .Select(d => Path.Combine(d, "bin"))
                .Last(d => File.Exists(Path.Combine(d, "initdb")))
            : throw new InvalidOperationException("PostgreSQL is missing: apt-get install postgresql (test.sh does it).");

    public async ValueTask DisposeAsync()
    {
        if (!started.IsValueCreated)
        {
            return;
        }

        Npgsql.NpgsqlConnection.ClearAllPools();
        await RunAsync($"{Programs}/pg_ctl", ["-D", Data, "-m", "immediate", "stop"]);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>Connection string of an empty database.</summary>
    /// <param name="disk">Folder that its files are put into; null = the server's own.</param>
    public async Task<string> NewDatabaseAsync(string? disk = null)
    {
        await started.Value;
        var name = $"shop{Interlocked.Increment(ref databases)}";
        await using var connection = new Npgsql.NpgsqlConnection(ConnectionTo("postgres"));
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        if (disk is not null)
        {
            command.CommandText = $"CREATE TABLESPACE small LOCATION '{disk}'";
            await command.ExecuteNonQueryAsync();
        }

        command.CommandText = $"CREATE DATABASE {name}{(disk is null ? "" : " TABLESPACE small")}";
        await command.ExecuteNonQueryAsync();
        return ConnectionTo(name);
    }

    private async Task StartAsync()
    {
        folder = Directory.CreateTempSubdirectory("slowglow-pg-").FullName;
        if (Environment.IsPrivilegedProcess)
        {
            await RunAsync("chown", ["postgres", folder], asServer: false);
        }

        await RunAsync($"{Programs}/initdb", ["-D", Data, "-A", "trust", "-U", "postgres", "-E", "UTF8", "--locale=C", "-N"]);
        string[] options = ["-c", $"unix_socket_directories={folder}", "-c", "listen_addresses=", "-c", "max_connections=50"];
        await RunAsync($"{Programs}/pg_ctl", ["-D", Data, "-w", "-l", $"{folder}/log", "-o", string.Join(' ', options), "start"]);
    }

    private string ConnectionTo(string name) => $"Host={folder};Username=postgres;Database={name};Maximum Pool Size=10";

    /// <summary>The server refuses to run as root: then its own user runs it.</summary>
    private static async Task RunAsync(string program, IReadOnlyList<string> words, bool asServer = true)
    {
        var change = asServer && Environment.IsPrivilegedProcess;
        var start = new ProcessStartInfo(change ? "runuser" : program) { WorkingDirectory = "/" };
        foreach (var word in change ? ["-u", "postgres", "--", program, .. words] : words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', words)} ended with {process.ExitCode}.");
        }
    }
}
