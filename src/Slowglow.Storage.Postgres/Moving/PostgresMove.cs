using System.Data;
using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;
using Npgsql;

namespace Slowglow.Storage.Postgres.Moving;

/// <summary>Carries a shop over into an empty PostgreSQL database: one transaction, which stands only when every row has been compared.</summary>
public sealed class PostgresMove(PostgresShop shop) : IShopMove
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<MovedTable>> RunAsync(ShopDatabase from, CancellationToken cancel = default)
    {
        try
        {
            await shop.PrepareAsync(cancel);
            await using var into = shop.CreateDbContext();
            into.Database.SetCommandTimeout(0);
            return await CarryAsync(from, into, cancel);
        }
        catch (Exception e) when (e is PostgresException { SqlState: PostgresErrorCodes.StringDataRightTruncation })
        {
            throw new CopyFailedException("a text is longer than the other database takes", e);
        }
        catch (Exception e) when (e is DbException or DbUpdateException or IOException or TimeoutException)
        {
            throw new CopyFailedException("the new database cannot be reached or written to, or the shop's file is in use", e);
        }
    }

    private static async Task<IReadOnlyList<MovedTable>> CarryAsync(
        ShopDatabase from,
        ShopDatabase into,
        CancellationToken cancel
    )
    {
        var tables = InOrder(into);
        // SQLite takes the write lock at once: what is compared is what stands there when the move is done.
        await using var still = await from.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancel);
        await using var whole = await into.Database.BeginTransactionAsync(cancel);
        var (source, target) = (from.Database.GetDbConnection(), (NpgsqlConnection)into.Database.GetDbConnection());
        await RefuseFullAsync(tables, target, cancel);
        var moving = tables.Select(t => new MovingTable(t)).ToList();
        foreach (var table in moving)
        {
            await table.CopyAsync(source, target, cancel);
        }

        List<MovedTable> moved = [];
        foreach (var table in moving)
        {
            moved.Add(await table.CompareAsync(source, target, cancel));
            await table.CountOnAsync(target, cancel);
        }

        await whole.CommitAsync(cancel);
        return moved;
    }

    private static async Task RefuseFullAsync(IReadOnlyList<ITable> tables, NpgsqlConnection target, CancellationToken cancel)
    {
        foreach (var table in tables)
        {
            await using var any = target.CreateCommand();
            any.CommandText = $"SELECT EXISTS (SELECT 1 FROM \"{table.Name}\")";
            if (await any.ExecuteScalarAsync(cancel) is true)
            {
                throw new CopyFailedException($"that database holds a shop already: there are rows in {table.Name}");
            }
        }
    }

    /// <summary>Tables that others point to first.</summary>
    private static List<ITable> InOrder(ShopDatabase database)
    {
        List<ITable> ordered = [];
        var left = database.Model.GetRelationalModel().Tables.OrderBy(t => t.Name, StringComparer.Ordinal).ToList();
        while (left.Count > 0)
        {
            var next = left.First(t =>
                t.ForeignKeyConstraints.All(k => k.PrincipalTable == t || ordered.Contains(k.PrincipalTable))
            );
            ordered.Add(next);
            left.Remove(next);
        }

        return ordered;
    }
}
