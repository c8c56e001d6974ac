using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Switches with their positions, the default first.</summary>
internal static class SwitchSection
{
    internal static void Read(YamlMap? map, SheetContext context)
    {
        if (map is null)
        {
            return;
        }

        foreach (var entry in new Keys(map, "switches", context.Findings).All)
        {
            var positions = Positions(entry.Value);
            if (positions.Count < 2 || positions.Distinct().Count() < positions.Count)
            {
                context.Findings.Error(
                    entry.Value.Place,
                    $"switch {entry.Key.Text} needs two or more different positions",
                    $"write {entry.Key.Text}: [off, on], the default first"
                );
            }
            else
            {
                context.Switches.Add(new Switch(entry.Key.Text, positions, entry.Key.Place));
            }
        }
    }

    private static IReadOnlyList<string> Positions(YamlNode node) =>
        node switch
        {
            YamlList list => [.. list.Items.OfType<YamlScalar>().Select(s => s.Text)],
            YamlScalar scalar => scalar.Text.Split(
                [',', '/', '|'],
                StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries
            ),
            _ => [],
        };
}
