using Slowglow.Quantities;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>One entry under devices: like another, with what differs; or described from nothing.</summary>
internal static class OwnDevice
{
    private static readonly string[] Known =
    [
        "like",
        "kind",
        "also",
        "alsoCalled",
        "pinout",
        "pins",
        "law",
        "spread",
        "limits",
        "source",
        "note",
    ];

    internal static Device? Read(
        YamlScalar type,
        Keys keys,
        Func<string, Device?> find,
        DeviceLibrary library,
        FindingList findings
    )
    {
        keys.RejectUnknown(Known);
        var like = keys.Scalar("like");
        var model = like is null ? null : find(like.Text);
        if (like is not null && model is null)
        {
            findings.Error(
                like.Place,
                $"device {type.Text}: '{like.Text}' is not in the device library",
                "the nearest are " + string.Join(", ", library.Nearest(like.Text))
            );
            return null;
        }

        if (KindOf(type, keys, model, findings) is not { } kind)
        {
            return null;
        }

        var pinout = OwnPinout.Read(keys.Find("pinout") ?? keys.Find("pins"), kind, type.Text, findings) ?? model?.Pinout;
        if (pinout is null)
        {
            findings.Error(type.Place, $"device {type.Text} has no pinout", "write pinout: {1: a, 2: k}");
            return null;
        }

        return Checked(
            type,
            keys,
            findings,
            new Device
            {
                Type = type.Text,
                AlsoCalled = Others(keys),
                Kind = kind,
                Pinout = pinout,
                Law = Figures(keys, "law", model?.Law, type.Text, findings),
                Spread = Figures(keys, "spread", model?.Spread, type.Text, findings),
                Limits = Figures(keys, "limits", model?.Limits, type.Text, findings),
                Source = keys.Text("source") ?? (model is null ? "the sheet" : $"the sheet, after {model.Type}"),
            }
        );
    }

    private static Device? Checked(YamlScalar type, Keys keys, FindingList findings, Device device)
    {
        var problems = DeviceCheck.Problems(device);
        foreach (var problem in problems)
        {
            findings.Error(
                type.Place,
                $"device {type.Text}: {problem}",
                keys.Find("like") is null ? "or write like: with the type it resembles" : ""
            );
        }

        return problems.Count == 0 ? device : null;
    }

    private static IReadOnlyList<string> Others(Keys keys) =>
        (keys.Find("also") ?? keys.Find("alsoCalled")) switch
        {
            YamlList list => [.. list.Items.OfType<YamlScalar>().Select(s => s.Text)],
            YamlScalar { Text.Length: > 0 } one => [one.Text],
            _ => [],
        };

    private static DeviceKind? KindOf(YamlScalar type, Keys keys, Device? model, FindingList findings)
    {
        if (keys.Scalar("kind") is not { } text)
        {
            if (model is null)
            {
                findings.Error(
                    type.Place,
                    $"device {type.Text} says neither 'like' nor 'kind'",
                    "write like: 1N4007, or kind: diode with pinout and law"
                );
            }

            return model?.Kind;
        }

        var plain = text.Text.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        if (!int.TryParse(plain, out _) && Enum.TryParse<DeviceKind>(plain, true, out var kind) && Enum.IsDefined(kind))
        {
            return kind;
        }

        findings.Error(
            text.Place,
            $"device {type.Text}: '{text.Text}' is no kind of device",
            "kinds: " + string.Join(", ", Enum.GetNames<DeviceKind>())
        );
        return null;
    }

    private static Dictionary<string, double> Figures(
        Keys keys,
        string section,
        IReadOnlyDictionary<string, double>? from,
        string type,
        FindingList findings
    )
    {
        var figures = new Dictionary<string, double>(from ?? new Dictionary<string, double>());
        foreach (var entry in keys.Map(section)?.Entries ?? [])
        {
            if (entry.Value is YamlScalar text && QuantityText.TryRead(text.Text, out var figure))
            {
                figures[entry.Key.Text] = figure.Value;
            }
            else
            {
                findings.Error(
                    entry.Value.Place,
                    $"device {type}: {section} '{entry.Key.Text}' is no figure",
                    "write a number in SI units"
                );
            }
        }

        return figures;
    }
}
