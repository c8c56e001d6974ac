using System.Text.Json;

namespace Slowglow.Sheets.Devices;

/// <summary>Values of a data file, taken one by one: mapping whole files by reflection took a fifth of a cold start.</summary>
internal static class Written
{
    internal static JsonElement.ObjectEnumerator Properties(JsonElement value) =>
        value.ValueKind == JsonValueKind.Object ? value.EnumerateObject() : throw Not("an object", value);

    internal static JsonElement.ArrayEnumerator Items(JsonElement value) =>
        value.ValueKind == JsonValueKind.Array ? value.EnumerateArray() : throw Not("a list", value);

    internal static JsonElement? Find(JsonElement value, string name)
    {
        JsonElement? found = null;
        foreach (var property in Properties(value))
        {
            found = property.NameEquals(name) ? property.Value : found;
        }

        return found;
    }

    internal static string Text(JsonElement value) =>
        value.ValueKind == JsonValueKind.String ? value.GetString()! : throw Not("text", value);

    internal static IReadOnlyList<string> Texts(JsonElement value)
    {
        var texts = new List<string>();
        foreach (var item in Items(value))
        {
            texts.Add(Text(item));
        }

        return texts;
    }

    internal static IReadOnlyDictionary<string, double> Figures(JsonElement value)
    {
        var figures = new Dictionary<string, double>();
        foreach (var property in Properties(value))
        {
            figures[property.Name] = Figure(property.Value);
        }

        return figures;
    }

    internal static IReadOnlyDictionary<string, T> Map<T>(JsonElement value, Func<JsonElement, T> read)
        where T : class
    {
        var map = new Dictionary<string, T>();
        foreach (var property in Properties(value))
        {
            map[property.Name] = read(property.Value);
        }

        return map;
    }

    private static double Figure(JsonElement value) =>
        value.ValueKind == JsonValueKind.Number ? value.GetDouble() : throw Not("a number", value);

    private static JsonException Not(string wanted, JsonElement found) =>
        new($"{wanted} was expected where {found.GetRawText()} stands");
}
