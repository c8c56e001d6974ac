using System.Data.Common;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Sqlite;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Hosting;

/// <summary>Serves the bench page from this process.</summary>
public static class BenchHost
{
    /// <summary>
    /// Serves until cancelled or told to stop. Empty when it ran; otherwise what kept it from running.
    /// </summary>
    public static async Task<IReadOnlyList<Finding>> RunAsync(BenchOptions options, CancellationToken cancel = default)
    {
        var started = await StartAsync(options, cancel);
        if (started.Value is not { } app)
        {
            return started.Findings;
        }

        await using (app)
        {
            await app.WaitForShutdownAsync(cancel);
        }

        return started.Findings.Where(f => f.Severity == Severity.Error).ToList();
    }

    /// <summary>Starts serving and returns; the caller stops and disposes.</summary>
    public static async Task<Parsed<WebApplication>> StartAsync(BenchOptions options, CancellationToken cancel = default)
    {
        if (!Uri.TryCreate(options.Url, UriKind.Absolute, out var url) || !IsLoopback(url))
        {
            return Wrong(
                $"The page cannot be served at {options.Url}.",
                "It is served on this machine only: http://127.0.0.1:5080"
            );
        }

        var path = Path.GetFullPath(options.DatabasePath ?? BenchOptions.DefaultDatabasePath);
        var shop = options.PostgresConnection is { } connection
            ? await OpenServerAsync(connection, cancel)
            : await OpenShopAsync(path, cancel);
        if (shop.Value is null)
        {
            return new(null, shop.Findings);
        }

        var app = BenchApplication.Build(options, url, shop.Value, path);
        var demo = await app.Services.GetRequiredService<OpenDemo>().RunAsync(options.DemoFolders, cancel);
        return await ListenAsync(app, options, demo.Findings, cancel);
    }

    private static async Task<Parsed<WebApplication>> ListenAsync(
        WebApplication app,
        BenchOptions options,
        IReadOnlyList<Finding> findings,
        CancellationToken cancel
    )
    {
        try
        {
            await app.StartAsync(cancel);
        }
        catch (IOException)
        {
            await app.DisposeAsync();
            return Wrong($"Something else answers at {options.Url} already.", "Stop it, or choose another port.");
        }

        // The first job is worked out while the person still looks for the page.
        if (await app.Services.GetRequiredService<FirstJob>().NumberAsync(cancel) is { } first)
        {
            await app.Services.GetRequiredService<JobDesks>().Of(first).OpenAsync();
        }

        var address = app.Urls.First();
        options.Ready?.Invoke(address);
        if (options.OpenBrowser)
        {
            Browser.Open(address);
        }

        return new(app, findings);
    }

    private static async Task<Parsed<IShopStore>> OpenShopAsync(string path, CancellationToken cancel)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var shop = new SqliteShop(path);
            await shop.PrepareAsync(cancel);
            return new(shop, []);
        }
        catch (Exception e) when (e is SqliteException or IOException or UnauthorizedAccessException or DbUpdateException)
        {
            return new(
                null,
                [
                    new(
                        Severity.Error,
                        Place.None,
                        $"The shop's file {path} cannot be opened.",
                        "A file made by this program, in a folder that may be written to."
                    ),
                ]
            );
        }
    }

    private static async Task<Parsed<IShopStore>> OpenServerAsync(string connection, CancellationToken cancel)
    {
        const string remedy = "Host=...;Database=...;Username=...: a database that is there, on a server that runs.";
        if (!PostgresShop.CanRead(connection))
        {
            return new(null, [new(Severity.Error, Place.None, "The connection to PostgreSQL cannot be read.", remedy)]);
        }

        try
        {
            var shop = new PostgresShop(connection);
            await shop.PrepareAsync(cancel);
            return new(shop, []);
        }
        catch (Exception e) when (e is DbException or DbUpdateException or IOException or TimeoutException)
        {
            return new(null, [new(Severity.Error, Place.None, "The PostgreSQL database cannot be opened.", remedy)]);
        }
    }

    private static bool IsLoopback(Uri url) =>
        url.Scheme == Uri.UriSchemeHttp
        && (url.Host == "localhost" || (IPAddress.TryParse(url.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip)));

    private static Parsed<WebApplication> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
