using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Controls with the rotation that expectations are worked at.</summary>
internal static class ControlSection
{
    internal static void Read(YamlMap? map, SheetContext context)
    {
        if (map is null)
        {
            return;
        }

        foreach (var entry in new Keys(map, "controls", context.Findings).All)
        {
            var rotation = 0.5;
            if (entry.Value is YamlScalar { Text: "" })
            {
                context.Assume(entry.Key.Text, "rotation", "50 %", "none given");
            }
            else if (entry.Value is not YamlScalar text || !RotationText.TryRead(text.Text, out rotation))
            {
                var said = entry.Value is YamlScalar scalar ? $"'{scalar.Text}'" : entry.Value.Kind;
                context.Findings.Error(
                    entry.Value.Place,
                    $"control {entry.Key.Text}: {said} is no rotation",
                    "write 0 % to 100 %"
                );
                rotation = 0.5;
            }

            context.Controls.Add(new Control(entry.Key.Text, rotation, entry.Key.Place));
        }
    }

    /// <summary>Warns of controls that turn nothing.</summary>
    internal static void CheckUsed(SheetContext context)
    {
        foreach (var control in context.Controls.Where(c => !context.ControlsUsed.Contains(c.Name)))
        {
            context.Findings.Warning(
                control.Place,
                $"no pot is named {control.Name}",
                $"write pot 1M log {control.Name} at the part",
                control.Name
            );
        }
    }
}
