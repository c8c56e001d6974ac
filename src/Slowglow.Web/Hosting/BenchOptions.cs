using Slowglow.Bench.Jobs;

namespace Slowglow.Web.Hosting;

/// <summary>How the bench page is served.</summary>
public sealed record BenchOptions
{
    /// <summary>Loopback only: the page is for the person at this bench.</summary>
    public string Url { get; init; } = "http://127.0.0.1:5080";

    /// <summary>Path of the shop's file; null = <see cref="DefaultDatabasePath"/>.</summary>
    public string? DatabasePath { get; init; }

    /// <summary>Connection string of a PostgreSQL database, for several benches; null = the file.</summary>
    public string? PostgresConnection { get; init; }

    /// <summary>Number of the job that the first page opens on; null = the first on the bench.</summary>
    public int? Job { get; init; }

    /// <summary>Opens the page in the person's browser once it answers.</summary>
    public bool OpenBrowser { get; init; }

    /// <summary>Folders of demo units; null = those that come with the program.</summary>
    public IReadOnlyList<string>? DemoFolders { get; init; }

    /// <summary>Told the address once the page answers.</summary>
    public Action<string>? Ready { get; init; }

    /// <summary>Units solved already by this process; null = none yet.</summary>
    public BenchUnits? Units { get; init; }

    /// <summary>In the person's own data folder.</summary>
    public static string DefaultDatabasePath =>
        Path.Combine(
            Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
            "slowglow",
            "shop.db"
        );
}
