using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>The parts section: kinds first, then each kind's own reading.</summary>
internal static class PartSection
{
    internal static IReadOnlyList<PartPlan> Read(YamlMap? parts, SheetContext context)
    {
        var plans = new List<PartPlan>();
        var first = new Dictionary<string, Place>();
        foreach (var entry in parts?.Entries ?? [])
        {
            context.Designators.Add(entry.Key.Text);
        }

        foreach (var entry in parts?.Entries ?? [])
        {
            if (!Designator(entry.Key, first, context.Findings) || PartEntryReader.Read(entry, context.Findings) is not { } part)
            {
                continue;
            }

            if (PartKinds.Of(part, context)?.Plan(part, context) is { } plan)
            {
                plans.Add(plan);
            }
        }

        return plans;
    }

    private static bool Designator(YamlScalar key, Dictionary<string, Place> first, FindingList findings)
    {
        var name = key.Text;
        if (first.TryGetValue(name, out var place))
        {
            findings.Error(
                key.Place,
                $"{name} stands twice",
                $"the first is on line {place.Line}; give one of them another number",
                name
            );
            return false;
        }

        first[name] = key.Place;
        if (name is NetTable.Ground or "MAINS" || name.Length == 0 || name.Any(c => c is '.' or '=' or ' ' or '>'))
        {
            findings.Error(key.Place, $"'{name}' cannot be a designator", "write letters and a number, e.g. R5", name);
            return false;
        }

        return true;
    }
}
