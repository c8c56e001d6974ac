using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Slowglow.Storage.Sqlite;

/// <summary>Copies of a SQLite shop: SQLite's own online copy, so that it is of one moment even while others write.</summary>
public sealed class SqliteCopies(string shopPath) : IShopCopies
{
    /// <inheritdoc/>
    public async Task<RowCounts> WriteAsync(string path, CancellationToken cancel = default)
    {
        if (!File.Exists(shopPath))
        {
            throw new CopyFailedException($"there is no shop at {shopPath}");
        }

        try
        {
            await using (var from = Open(shopPath, SqliteOpenMode.ReadOnly))
            await using (var into = Open(path, SqliteOpenMode.ReadWriteCreate))
            {
                from.BackupDatabase(into);
                await SayAsync(into, "PRAGMA journal_mode=DELETE;", cancel);
            }

            return await CheckAsync(path, cancel);
        }
        catch (SqliteException e)
        {
            throw new CopyFailedException("the disk is full, or the shop's file cannot be read", e);
        }
    }

    /// <inheritdoc/>
    public async Task<RowCounts> ReadAsync(string path, CancellationToken cancel = default)
    {
        var coming = shopPath + ".coming";
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(shopPath))!);
        File.Copy(path, coming, overwrite: true);
        try
        {
            var counts = await CheckAsync(coming, cancel);
            await new SqliteShop(coming).PrepareAsync(cancel);
            await FoldAsync(coming, cancel);
            await SetAsideAsync(cancel);
            File.Move(coming, shopPath);
            return counts;
        }
        catch (SqliteException e)
        {
            throw new CopyFailedException("it is no whole copy of a shop", e);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            File.Delete(coming);
        }
    }

    private async Task SetAsideAsync(CancellationToken cancel)
    {
        if (!File.Exists(shopPath))
        {
            return;
        }

        await FoldAsync(shopPath, cancel);
        var aside = Enumerable
            .Range(1, 10_000)
            .Select(n => $"{shopPath}.before-{n.ToString(CultureInfo.InvariantCulture)}")
            .First(p => !File.Exists(p));
        File.Move(shopPath, aside);
        File.Delete(shopPath + "-wal");
        File.Delete(shopPath + "-shm");
    }

    /// <summary>Brings what is still in the write-ahead log into the file itself.</summary>
    private static async Task FoldAsync(string path, CancellationToken cancel)
    {
        SqliteConnection.ClearAllPools();
        await using var connection = Open(path, SqliteOpenMode.ReadWrite);
        await SayAsync(connection, "PRAGMA wal_checkpoint(TRUNCATE);", cancel);
    }

    private static async Task<RowCounts> CheckAsync(string path, CancellationToken cancel)
    {
        await using (var connection = Open(path, SqliteOpenMode.ReadOnly))
        {
            if (await SayAsync(connection, "PRAGMA integrity_check;", cancel) != "ok")
            {
                throw new CopyFailedException("it is damaged");
            }
        }

        return new(
            await CountAsync("customers"),
            await CountAsync("jobs"),
            await CountAsync("timeline"),
            await TableAsync("papers") ? await CountAsync("papers") : 0,
            await TableAsync("photos") ? await CountAsync("photos") : 0
        );

        async Task<int> CountAsync(string table) =>
            int.Parse(await AskAsync($"SELECT COUNT(*) FROM {table};"), CultureInfo.InvariantCulture);
        async Task<bool> TableAsync(string table) =>
            await AskAsync($"SELECT COUNT(*) FROM sqlite_master WHERE name = '{table}';") == "1";
        async Task<string> AskAsync(string question)
        {
            await using var connection = Open(path, SqliteOpenMode.ReadOnly);
            return await SayAsync(connection, question, cancel);
        }
    }

    private static SqliteConnection Open(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Mode = mode,
                Pooling = false,
                DefaultTimeout = 15,
            }.ToString()
        );
        connection.Open();
        return connection;
    }

    private static async Task<string> SayAsync(SqliteConnection connection, string statement, CancellationToken cancel)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = statement;
        return Convert.ToString(await command.ExecuteScalarAsync(cancel), CultureInfo.InvariantCulture) ?? "";
    }
}
