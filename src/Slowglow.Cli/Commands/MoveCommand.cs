using System.Globalization;
using Slowglow.Bench.Keeping;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Postgres.Moving;
using Slowglow.Storage.Sqlite;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow move CONNECTION</summary>
internal sealed class MoveCommand : AsyncCommand<MoveSettings>
{
    public override async Task<int> ExecuteAsync(
        CommandContext context,
        MoveSettings settings,
        CancellationToken cancellationToken
    )
    {
        var streams = (Streams)context.Data!;
        if (!File.Exists(settings.ShopPath))
        {
            throw new CannotRunException($"There is no shop at {settings.ShopPath}.");
        }

        var from = new SqliteShop(settings.ShopPath);
        await from.PrepareAsync(cancellationToken);
        var moved = await new MoveShop(from, new PostgresMove(Into(settings.Connection))).RunAsync(cancellationToken);
        if (moved.Value is not { } tables)
        {
            return KeepingAnswer.Refuse(moved.Findings, streams);
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, new MoveJson([.. tables.Select(t => new MovedTableJson(t.Table, t.Rows))]));
            return ExitCode.Ran;
        }

        foreach (var table in tables)
        {
            streams.Out.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{table.Table}: {table.Rows} rows, read again on both sides: the same"
                )
            );
        }

        streams.Out.WriteLine(
            $"Moved. {settings.ShopPath} stays as it was; start the page with: slowglow bench --postgres CONNECTION"
        );
        return ExitCode.Ran;
    }

    private static PostgresShop Into(string connection) =>
        PostgresShop.CanRead(connection)
            ? new PostgresShop(connection)
            : throw new CannotRunException("The connection cannot be read: it would be \"Host=...;Database=...;Username=...\".");
}
