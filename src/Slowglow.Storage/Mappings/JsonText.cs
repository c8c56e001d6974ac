using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Slowglow.Storage.Mappings;

/// <summary>Records that are read back as a whole are stored as JSON text.</summary>
public static class JsonText
{
    public static JsonSerializerOptions Options { get; } =
        new()
        {
            IgnoreReadOnlyProperties = true,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Converters = { new JsonStringEnumConverter() },
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    public static T Read<T>(string text) =>
        JsonSerializer.Deserialize<T>(text, Options)
        ?? throw new InvalidOperationException($"No {typeof(T).Name} is stored here.");

    internal static ValueConverter<T, string> Converter<T>() => new(value => Write(value), text => Read<T>(text));

    /// <summary>Records are replaced, never changed in place: one is the same as itself alone.</summary>
    internal static ValueComparer<T> Comparer<T>()
        where T : class => new((a, b) => ReferenceEquals(a, b), value => RuntimeHelpers.GetHashCode(value), value => value);
}
