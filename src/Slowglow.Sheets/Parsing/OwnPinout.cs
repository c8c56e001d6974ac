using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Reads a pinout: <c>{1: a2, 2: g2, 3: k2, 4: h}</c>, a list of electrodes from pin 1 on, or <c>1:a.2 2:g.2</c> as in the library.</summary>
internal static class OwnPinout
{
    internal static IReadOnlyList<DevicePin>? Read(YamlNode? node, DeviceKind kind, string type, FindingList findings)
    {
        switch (node)
        {
            case null or YamlScalar { Text: "" }:
                return null;
            case YamlMap map:
                return
                [
                    .. map
                        .Entries.Where(e => e.Value is YamlScalar)
                        .Select(e => Pin(e.Key.Text, ((YamlScalar)e.Value).Text, kind)),
                ];
            case YamlList list:
                return [.. list.Items.OfType<YamlScalar>().Select((s, i) => Pin($"{i + 1}", s.Text, kind))];
            case YamlScalar words:
                return [.. WordSplitter.Split(words).Select((w, i) => Numbered(w.Text, $"{i + 1}", kind))];
            default:
                findings.Error(node.Place, $"device {type}: the pinout holds {node.Kind}", "write pinout: {1: a, 2: k}");
                return null;
        }
    }

    private static DevicePin Numbered(string text, string number, DeviceKind kind)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 ? Pin(text[..colon], text[(colon + 1)..], kind) : Pin(number, text, kind);
    }

    // A digit after the electrode is the section, but g2 and g3 are grids of a pentode.
    private static DevicePin Pin(string number, string text, DeviceKind kind)
    {
        var electrode = text.ToLowerInvariant();
        var dot = electrode.LastIndexOf('.');
        if (dot > 0 && int.TryParse(electrode[(dot + 1)..], out var section) && section is >= 0 and < 10)
        {
            return new DevicePin(number, section, electrode[..dot]);
        }

        if (
            electrode is "h" or "ht" or "v+" or "v-" or "nc" or "ic" or "is" or ""
            || (kind == DeviceKind.RectifierValve && electrode == "k")
        )
        {
            return new DevicePin(number, 0, electrode.Length == 0 ? "nc" : electrode);
        }

        var digit = electrode[^1];
        var isGrid = kind == DeviceKind.Pentode && electrode is "g2" or "g3";
        return char.IsAsciiDigit(digit) && digit != '0' && !isGrid && electrode.Length > 1
            ? new DevicePin(number, digit - '0', electrode[..^1])
            : new DevicePin(number, 1, electrode);
    }
}
