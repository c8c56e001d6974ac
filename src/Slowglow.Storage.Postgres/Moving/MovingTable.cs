using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore.Metadata;
using Npgsql;

namespace Slowglow.Storage.Postgres.Moving;

/// <summary>Carries one table over, and compares it.</summary>
internal sealed class MovingTable(ITable table)
{
    private readonly IReadOnlyList<MovingColumn> columns = [.. table.Columns.Select(c => new MovingColumn(c))];
    private readonly IReadOnlyList<string> key = [.. table.PrimaryKey!.Columns.Select(c => c.Name)];

    private string Listed => string.Join(", ", columns.Select(c => $"\"{c.Name}\""));

    /// <summary>Fills the table of the new database with the rows of the old one.</summary>
    public async Task<long> CopyAsync(DbConnection from, NpgsqlConnection into, CancellationToken cancel)
    {
        var rows = 0L;
        await using var read = from.CreateCommand();
        read.CommandText = $"SELECT {Listed} FROM \"{table.Name}\"";
        await using var reader = await read.ExecuteReaderAsync(cancel);
        await using var writer = await into.BeginBinaryImportAsync(
            $"COPY \"{table.Name}\" ({Listed}) FROM STDIN (FORMAT BINARY)",
            cancel
        );
        for (; await reader.ReadAsync(cancel); rows++)
        {
            await writer.StartRowAsync(cancel);
            for (var i = 0; i < columns.Count; i++)
            {
                if (columns[i].Value(reader.GetValue(i)) is not { } value)
                {
                    await writer.WriteNullAsync(cancel);
                }
                else if (value is string text && text.Contains('\0', StringComparison.Ordinal))
                {
                    throw new CopyFailedException(
                        $"{Row(reader)} holds a sign without a shape (NUL) in {columns[i].Name}, which PostgreSQL cannot keep"
                    );
                }
                else
                {
                    await writer.WriteAsync(value, columns[i].Kept, cancel);
                }
            }
        }

        await writer.CompleteAsync(cancel);
        return rows;
    }

    /// <summary>Reads both sides again in the order of their key and compares every value of every row.</summary>
    /// <exception cref="CopyFailedException">They are not the same; it names the row.</exception>
    public async Task<MovedTable> CompareAsync(DbConnection from, NpgsqlConnection into, CancellationToken cancel)
    {
        var rows = 0L;
        await using var left = from.CreateCommand();
        await using var right = into.CreateCommand();
        left.CommandText = $"SELECT {Listed} FROM \"{table.Name}\" ORDER BY {Order("")}";
        // By bytes, as the other side orders, whatever the server's language.
        right.CommandText = $"SELECT {Listed} FROM \"{table.Name}\" ORDER BY {Order(" COLLATE \"C\"")}";
        await using var old = await left.ExecuteReaderAsync(cancel);
        await using var copy = await right.ExecuteReaderAsync(cancel);
        while (await old.ReadAsync(cancel))
        {
            if (!await copy.ReadAsync(cancel))
            {
                throw new CopyFailedException($"{Row(old)} is missing in the copy");
            }

            for (var i = 0; i < columns.Count; i++)
            {
                if (!columns[i].Same(old.GetValue(i), copy.GetValue(i)))
                {
                    throw new CopyFailedException($"{Row(old)} is not the same in {columns[i].Name}");
                }
            }

            rows++;
        }

        return await copy.ReadAsync(cancel)
            ? throw new CopyFailedException($"{Row(copy)} is in the copy alone")
            : new(table.Name, rows);
    }

    /// <summary>New rows go on counting behind those that came over.</summary>
    public async Task CountOnAsync(NpgsqlConnection into, CancellationToken cancel)
    {
        foreach (var counted in table.Columns.Where(Counts))
        {
            await using var command = into.CreateCommand();
            command.CommandText = $"""
                SELECT setval(pg_get_serial_sequence('"{table.Name}"', '{counted.Name}'), (SELECT MAX("{counted.Name}") FROM "{table.Name}"))
                WHERE EXISTS (SELECT 1 FROM "{table.Name}")
                """;
            await command.ExecuteNonQueryAsync(cancel);
        }
    }

    private bool Counts(IColumn column) =>
        key.Contains(column.Name)
        && column.PropertyMappings.Any(m => m.Property is { ValueGenerated: ValueGenerated.OnAdd } p && p.ClrType == typeof(int));

    private string Order(string collation) =>
        string.Join(", ", key.Select(k => $"\"{k}\"{(columns.Single(c => c.Name == k).IsText ? collation : "")}"));

    private string Row(DbDataReader row)
    {
        var values = key.Select(k => Convert.ToString(row[k], CultureInfo.InvariantCulture));
        return $"row {string.Join(" ", values)} of {table.Name}";
    }
}
