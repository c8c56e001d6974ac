using System.Text.Json;

namespace Slowglow.Sheets.Devices;

/// <summary>One device of a data file as written; what it leaves out comes from the file's common part.</summary>
internal sealed class DeviceEntry
{
    internal string Type { get; private set; } = "";

    internal IReadOnlyList<string> AlsoCalled { get; private set; } = [];

    /// <summary>Name of one of the file's pinouts, or a pinout written out.</summary>
    internal string? Pinout { get; private set; }

    internal IReadOnlyDictionary<string, double> Law { get; private set; } = new Dictionary<string, double>();

    internal IReadOnlyDictionary<string, double> Spread { get; private set; } = new Dictionary<string, double>();

    internal IReadOnlyDictionary<string, double> Limits { get; private set; } = new Dictionary<string, double>();

    internal string Source { get; private set; } = "";

    /// <summary>Other types whose law is near enough the same, each with limits of its own (none known: empty).</summary>
    internal IReadOnlyDictionary<string, IReadOnlyDictionary<string, double>> Near { get; private set; } =
        new Dictionary<string, IReadOnlyDictionary<string, double>>();

    /// <summary>Reads the whole entry.</summary>
    /// <exception cref="JsonException">It holds something that no entry has.</exception>
    internal static DeviceEntry Read(JsonElement written)
    {
        var entry = new DeviceEntry();
        foreach (var property in Written.Properties(written))
        {
            entry.Take(property.Name, property.Value);
        }

        return entry;
    }

    private void Take(string name, JsonElement value)
    {
        switch (name)
        {
            case "type":
                Type = Written.Text(value);
                break;
            case "alsoCalled":
                AlsoCalled = Written.Texts(value);
                break;
            case "pinout":
                Pinout = Written.Text(value);
                break;
            case "law":
                Law = Written.Figures(value);
                break;
            case "spread":
                Spread = Written.Figures(value);
                break;
            case "limits":
                Limits = Written.Figures(value);
                break;
            case "source":
                Source = Written.Text(value);
                break;
            case "near":
                Near = Written.Map(value, Written.Figures);
                break;
            default:
                throw new JsonException($"a device has no '{name}'");
        }
    }
}
