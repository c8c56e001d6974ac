using System.Globalization;
using Microsoft.EntityFrameworkCore.Metadata;
using NpgsqlTypes;

namespace Slowglow.Storage.Postgres.Moving;

/// <summary>A column as both databases hold it. Values of the other database come in its own few types and are made those of the model.</summary>
internal sealed class MovingColumn
{
    private static readonly Dictionary<Type, (NpgsqlDbType Kept, Func<object, object> Made)> Kinds = new()
    {
        [typeof(int)] = (NpgsqlDbType.Integer, v => Convert.ToInt32(v, CultureInfo.InvariantCulture)),
        [typeof(long)] = (NpgsqlDbType.Bigint, v => Convert.ToInt64(v, CultureInfo.InvariantCulture)),
        [typeof(double)] = (NpgsqlDbType.Double, v => Convert.ToDouble(v, CultureInfo.InvariantCulture)),
        [typeof(bool)] = (NpgsqlDbType.Boolean, v => Convert.ToBoolean(v, CultureInfo.InvariantCulture)),
        [typeof(decimal)] = (NpgsqlDbType.Numeric, v => Convert.ToDecimal(v, CultureInfo.InvariantCulture)),
        [typeof(string)] = (NpgsqlDbType.Text, v => Convert.ToString(v, CultureInfo.InvariantCulture)!),
        [typeof(byte[])] = (NpgsqlDbType.Bytea, v => v),
    };

    private readonly Func<object, object> made;

    public MovingColumn(IColumn column)
    {
        Name = column.Name;
        IsText = column.ProviderClrType == typeof(string);
        var type = Nullable.GetUnderlyingType(column.ProviderClrType) ?? column.ProviderClrType;
        if (!Kinds.TryGetValue(type, out var kind))
        {
            throw new InvalidOperationException($"Column {column.Name} holds {type.Name}, which no move knows.");
        }

        (Kept, made) = kind;
    }

    public string Name { get; }

    public bool IsText { get; }

    public NpgsqlDbType Kept { get; }

    /// <summary>Null for nothing.</summary>
    public object? Value(object read) => read is DBNull ? null : made(read);

    /// <summary>True when both hold the same.</summary>
    public bool Same(object left, object right) =>
        (Value(left), Value(right)) switch
        {
            (null, null) => true,
            (byte[] a, byte[] b) => a.AsSpan().SequenceEqual(b),
            var (a, b) => Equals(a, b),
        };
}
