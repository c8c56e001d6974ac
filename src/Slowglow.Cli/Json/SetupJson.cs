using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Json;

/// <summary>A setup as its name where the reader knows it by name, otherwise as an object with the keys of the readings format.</summary>
internal static class SetupJson
{
    /// <param name="setup">The setup.</param>
    /// <param name="known">Setups that have a name in the readings document (or the two that are always there).</param>
    public static object From(Setup setup, IReadOnlyList<Setup> known) => known.Contains(setup) ? setup.Name : Keys(setup);

    private static Dictionary<string, object> Keys(Setup setup)
    {
        Dictionary<string, object> keys = [];
        Add(keys, "mains", setup.MainsVolts);
        Add(keys, "limiter", setup.LimiterWatts);
        Add(keys, "load", setup.LoadOhms is { } load && double.IsFinite(load) ? load : null);
        if (setup.PowerOff)
        {
            keys["power"] = "off";
        }

        if (setup.ValvesOut)
        {
            keys["valves"] = "out";
        }

        AddList(keys, "pulled", setup.Pulled);
        AddList(keys, "lifted", setup.Lifted);
        if (setup.Input != InputState.Open)
        {
            keys["input"] = setup.Input == InputState.Shorted ? "shorted" : "driven";
        }

        if (setup.Channel is { } channel)
        {
            keys["channel"] = channel;
        }

        foreach (var (name, position) in setup.Switches)
        {
            keys[name] = position;
        }

        foreach (var (name, rotation) in setup.Controls)
        {
            keys[name] = rotation;
        }
        return keys;
    }

    private static void Add(Dictionary<string, object> keys, string key, double? figure)
    {
        if (figure is { } value)
        {
            keys[key] = value;
        }
    }

    private static void AddList(Dictionary<string, object> keys, string key, IReadOnlyList<string> items)
    {
        if (items.Count > 0)
        {
            keys[key] = items;
        }
    }
}
