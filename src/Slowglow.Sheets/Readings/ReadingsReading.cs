using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Setups;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Readings;

/// <summary>One reading of one readings document.</summary>
internal sealed class ReadingsReading(Sheet sheet, FindingList findings)
{
    internal ReadingsDocument Run(Keys keys)
    {
        keys.WarnUnknown(["complaint", "setups", "readings", "note", "notes"]);
        var setups = Setups(keys.Map("setups"));
        var line = new ReadingLine(sheet, setups, findings);
        var readings = new List<Reading>();
        foreach (var item in Items(keys.Find("readings")))
        {
            if (Line(item, line) is { } reading)
            {
                readings.AddRange(reading.Each());
            }
        }

        return new ReadingsDocument(Complaint(keys), setups, readings);
    }

    private string? Complaint(Keys keys) =>
        keys.Find("complaint") is YamlList list
            ? string.Join("; ", list.Items.OfType<YamlScalar>().Select(s => s.Text))
            : keys.Text("complaint");

    private IReadOnlyList<Setup> Setups(YamlMap? map)
    {
        var setups = new List<Setup>();
        foreach (var entry in map is null ? [] : new Keys(map, "setups", findings).All)
        {
            setups.Add(new SetupReader(sheet, findings).Read(entry));
        }

        return setups.Count == 0 ? [Setup.Default] : setups;
    }

    private IReadOnlyList<YamlNode> Items(YamlNode? node)
    {
        switch (node)
        {
            case YamlList list:
                return list.Items;
            case null or YamlScalar { Text: "" }:
                return [];
            default:
                findings.Error(node.Place, $"'readings' holds {node.Kind}, not a list", "write a line for each: - V1.6 = 62 V");
                return [];
        }
    }

    private Reading? Line(YamlNode item, ReadingLine line)
    {
        switch (item)
        {
            case YamlScalar { Text.Length: > 0 } text:
                return line.Read(text);
            case YamlMap { Entries: [{ Key.Text: "mistake", Value: YamlScalar { Text.Length: > 0 } withdrawn }] }:
                return line.Read(withdrawn) is { } read ? read with { IsMistake = true, Text = "mistake: " + read.Text } : null;
            case YamlMap { Entries: [{ Value: YamlScalar value } only] }:
                findings.Error(
                    item.Place,
                    $"'{only.Key.Text}: {value.Text}' is no reading",
                    $"write {only.Key.Text} = {value.Text}"
                );
                return null;
            default:
                findings.Error(item.Place, $"{item.Kind} is no reading", "write - V1.6 = 62 V");
                return null;
        }
    }
}
