using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Reads a pinout: <c>{1: a2, 2: g2, 3: k2, 4: h}</c> or a list of electrodes from pin 1 on.</summary>
internal static class OwnPinout
{
    internal static IReadOnlyList<DevicePin>? Read(YamlNode? node, string type, FindingList findings)
    {
        switch (node)
        {
            case null or YamlScalar { Text: "" }:
                return null;
            case YamlMap map:
                return [.. map.Entries.Where(e => e.Value is YamlScalar).Select(e => Pin(e.Key.Text, ((YamlScalar)e.Value).Text))];
            case YamlList list:
                return [.. list.Items.OfType<YamlScalar>().Select((s, i) => Pin($"{i + 1}", s.Text))];
            case YamlScalar words:
                return [.. WordSplitter.Split(words).Select((w, i) => Pin($"{i + 1}", w.Text))];
            default:
                findings.Error(node.Place, $"device {type}: the pinout holds {node.Kind}", "write pinout: {1: a, 2: k}");
                return null;
        }
    }

    // A digit after the electrode is the section, but g2 and g3 are grids of a pentode.
    private static DevicePin Pin(string number, string text)
    {
        var electrode = text.ToLowerInvariant();
        if (electrode is "h" or "v+" or "v-" or "nc" or "")
        {
            return new DevicePin(number, 0, electrode.Length == 0 ? "nc" : electrode);
        }

        var digit = electrode[^1];
        var isGrid = electrode is "g2" or "g3";
        return char.IsAsciiDigit(digit) && digit != '0' && !isGrid && electrode.Length > 1
            ? new DevicePin(number, digit - '0', electrode[..^1])
            : new DevicePin(number, 1, electrode);
    }
}
