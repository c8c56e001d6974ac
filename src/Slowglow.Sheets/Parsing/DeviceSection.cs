using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Type numbers that the sheet describes itself.</summary>
internal static class DeviceSection
{
    /// <summary>The library with the sheet's own devices added (these win), and the types that could not be read.</summary>
    internal static (DeviceLibrary Library, IReadOnlySet<string> Broken) Read(
        YamlMap? map,
        DeviceLibrary library,
        FindingList findings
    )
    {
        if (map is null)
        {
            return (library, new HashSet<string>());
        }

        var own = new List<Device>();
        var broken = new HashSet<string>();
        foreach (var entry in new Keys(map, "devices", findings).All)
        {
            if (entry.Value is not YamlMap keys)
            {
                findings.Error(
                    entry.Value.Place,
                    $"device {entry.Key.Text} holds {entry.Value.Kind}",
                    "write { like: 1N4007 }, or kind, pinout, law and source"
                );
            }
            else if (
                OwnDevice.Read(
                    entry.Key,
                    new Keys(keys, $"device {entry.Key.Text}", findings),
                    t => own.Find(d => d.Type == t) ?? library.Find(t),
                    library,
                    findings
                ) is
                { } device
            )
            {
                own.Add(device);
            }
            else
            {
                broken.Add(entry.Key.Text);
            }
        }

        return (own.Count == 0 ? library : library.With(own), broken);
    }
}
