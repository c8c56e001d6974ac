using Slowglow.Quantities;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Where a test signal goes in and comes out: one path, or one for each named channel.</summary>
internal static class SignalSection
{
    private static readonly string[] Known = ["in", "out", "source", "level", "load"];

    internal static IReadOnlyList<SignalPath> Read(YamlNode? node, NetTable nets, SheetContext context)
    {
        switch (node)
        {
            case null or YamlScalar { Text: "" }:
                return [];
            case YamlMap map when map.Entries.Any(e => e.Value is YamlMap):
                return Channels(map, nets, context);
            case YamlMap map:
                var keys = new Keys(map, "signal", context.Findings);
                keys.RejectUnknown(Known);
                return One("signal", keys, null, nets, context) is { } path ? [path] : [];
            default:
                context.Findings.Error(
                    node.Place,
                    $"'signal' holds {node.Kind}, not keys with values",
                    "write signal: { in: IN, out: OUT }"
                );
                return [];
        }
    }

    // Keys beside the channels hold for every channel that does not say its own.
    private static List<SignalPath> Channels(YamlMap map, NetTable nets, SheetContext context)
    {
        var common = new YamlMap([.. map.Entries.Where(e => e.Value is not YamlMap)], map.Place);
        var shared = new Keys(common, "signal", context.Findings);
        shared.RejectUnknown(Known);
        var paths = new List<SignalPath>();
        foreach (var entry in map.Entries.Where(e => e.Value is YamlMap))
        {
            var keys = new Keys((YamlMap)entry.Value, $"channel {entry.Key.Text}", context.Findings);
            keys.RejectUnknown(Known);
            if (paths.Exists(p => p.Name == entry.Key.Text))
            {
                context.Findings.Error(
                    entry.Key.Place,
                    $"channel {entry.Key.Text} stands twice under signal",
                    "give each a name of its own"
                );
            }
            else if (One(entry.Key.Text, keys, shared, nets, context) is { } path)
            {
                paths.Add(path);
            }
        }

        return paths;
    }

    private static SignalPath? One(string name, Keys keys, Keys? shared, NetTable nets, SheetContext context)
    {
        YamlScalar? Said(string key) => keys.Scalar(key) ?? shared?.Scalar(key);
        var input = Net("in", Said("in"), keys.Place, nets, context);
        var output = Net("out", Said("out"), keys.Place, nets, context);
        var source = Figure(Said("source"), Unit.Ohm, "source", 600, "ohm", name, context);
        var level = Figure(Said("level"), Unit.Volt, "level", 0.1, "V", name, context);
        var load = Load(Said("load"), context);
        return input is null || output is null ? null : new SignalPath(name, input, output, source, level, load);
    }

    private static string? Net(string key, YamlScalar? text, Place place, NetTable nets, SheetContext context)
    {
        if (text is null)
        {
            context.Findings.Error(place, $"signal does not say '{key}'", $"write {key}: NET");
            return null;
        }

        var net = nets.Find(text.Text);
        if (net is null)
        {
            context.Findings.Error(
                text.Place,
                $"signal: no part reaches the net '{text.Text}'",
                NearestWords.Suggestion(text.Text, nets.Names)
            );
        }

        return net;
    }

    private static double Figure(
        YamlScalar? text,
        Unit unit,
        string key,
        double usual,
        string shown,
        string name,
        SheetContext context
    )
    {
        if (text is null)
        {
            context.Assume(
                name,
                key,
                Engineering.Format(usual, shown),
                key == "source" ? "an ordinary generator, common practice, no source" : "none given"
            );
            return usual;
        }

        if (QuantityText.TryRead(text.Text, unit, out var figure) && figure.Value >= 0)
        {
            return figure.Value;
        }

        context.Findings.Error(
            text.Place,
            $"signal: {key} '{text.Text}' is no figure in {UnitNames.Of(unit)}",
            unit == Unit.Volt ? "write 100 mV" : "write 10k"
        );
        return usual;
    }

    private static double Load(YamlScalar? text, SheetContext context)
    {
        if (text is null || text.Text is "none" or "open")
        {
            return double.PositiveInfinity;
        }

        if (QuantityText.TryRead(text.Text, Unit.Ohm, out var figure) && figure.Value > 0)
        {
            return figure.Value;
        }

        context.Findings.Error(text.Place, $"signal: load '{text.Text}' is no figure in ohms", "write 8 ohm, 1M, or none");
        return double.PositiveInfinity;
    }
}
