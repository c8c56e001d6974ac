using Slowglow.Quantities;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Remarks on test points, and on parts that are hard to get at.</summary>
internal static class PointSection
{
    internal static IReadOnlyList<PointRemark> Read(YamlMap? map, NetTable nets, List<Part> parts, SheetContext context)
    {
        var remarks = new List<PointRemark>();
        foreach (var entry in map is null ? [] : new Keys(map, "points", context.Findings).All)
        {
            var (minutes, note) = Remark(entry, context.Findings);
            var where = entry.Key.Text;
            var part = parts.FindIndex(p => p.Designator == where);
            if (part >= 0 && minutes is { } access)
            {
                parts[part] = parts[part] with { AccessMinutes = access };
            }
            else if (part < 0 && nets.Find(where) is null)
            {
                context.Findings.Warning(
                    entry.Key.Place,
                    $"points: no part reaches '{where}'",
                    NearestWords.Suggestion(where, nets.Names)
                );
                continue;
            }

            remarks.Add(new PointRemark(where, minutes, note));
        }

        return remarks;
    }

    private static (double? Minutes, string? Note) Remark(YamlEntry entry, FindingList findings)
    {
        switch (entry.Value)
        {
            case YamlScalar scalar:
                return QuantityText.TryRead(scalar.Text, Unit.Minute, out var time) && time.Value >= 0
                    ? (time.Value, null)
                    : (null, scalar.Text);
            case YamlMap map:
                var keys = new Keys(map, $"point {entry.Key.Text}", findings);
                keys.RejectUnknown(["access", "note"]);
                return (Access(keys.Scalar("access"), entry.Key.Text, findings), keys.Text("note"));
            default:
                findings.Error(
                    entry.Value.Place,
                    $"point {entry.Key.Text} holds {entry.Value.Kind}",
                    "write { access: 1 min, note: red lead on C1 }"
                );
                return (null, null);
        }
    }

    private static double? Access(YamlScalar? text, string point, FindingList findings)
    {
        if (text is null)
        {
            return null;
        }

        if (QuantityText.TryRead(text.Text, Unit.Minute, out var minutes) && minutes.Value >= 0)
        {
            return minutes.Value;
        }

        findings.Error(text.Place, $"point {point}: access '{text.Text}' is no time", "write access: 5 min");
        return null;
    }
}
