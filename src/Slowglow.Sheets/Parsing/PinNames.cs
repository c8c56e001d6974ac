using Slowglow.Sheets.Parts;

namespace Slowglow.Sheets.Parsing;

/// <summary>Finds a pin by any name a technician may use: number, electrode, or the electrode's other name.</summary>
internal static class PinNames
{
    private static readonly Dictionary<string, string> OtherNames = new(StringComparer.OrdinalIgnoreCase)
    {
        ["anode"] = "a",
        ["plate"] = "a",
        ["p"] = "a",
        ["grid"] = "g",
        ["g1"] = "g",
        ["cathode"] = "k",
        ["c"] = "k",
        ["screen"] = "g2",
        ["s"] = "g2",
        ["suppressor"] = "g3",
        ["heater"] = "h",
        ["filament"] = "h",
        ["f"] = "h",
        ["collector"] = "c",
        ["base"] = "b",
        ["emitter"] = "e",
        ["drain"] = "d",
        ["gate"] = "g",
        ["source"] = "s",
        ["input"] = "in",
        ["output"] = "out",
        ["ground"] = "gnd",
        ["common"] = "gnd",
        ["com"] = "gnd",
        ["adjust"] = "adj",
        ["plus"] = "1",
        ["+"] = "1",
        ["minus"] = "2",
        ["-"] = "2",
        ["vcc"] = "v+",
        ["vee"] = "v-",
        ["v"] = "v+",
    };

    /// <summary>The pin, or null.</summary>
    internal static PinPlan? Find(IReadOnlyList<PinPlan> pins, string name)
    {
        return pins.FirstOrDefault(p => p.Number == name) ?? ByElectrode(pins, name) ?? ByOtherName(pins, name);
    }

    private static PinPlan? ByElectrode(IReadOnlyList<PinPlan> pins, string name) =>
        pins.FirstOrDefault(p => ElectrodeName.Matches(p.Electrode, name))
        ?? pins.FirstOrDefault(p => ElectrodeName.Matches(p.Electrode.ToLowerInvariant(), name.ToLowerInvariant()))
        ?? pins.FirstOrDefault(p => string.Equals(p.Number, name, StringComparison.OrdinalIgnoreCase));

    private static PinPlan? ByOtherName(IReadOnlyList<PinPlan> pins, string name)
    {
        if (OtherNames.TryGetValue(name, out var other))
        {
            return pins.FirstOrDefault(p => p.Number == other || ElectrodeName.Matches(p.Electrode, other));
        }

        var stem = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return stem.Length > 0 && stem.Length < name.Length && OtherNames.TryGetValue(stem, out var electrode)
            ? pins.FirstOrDefault(p => ElectrodeName.Matches(p.Electrode, electrode + name[stem.Length..]))
            : null;
    }

    /// <summary>"1, 2 (g), 3 (k)" for messages.</summary>
    internal static string List(IReadOnlyList<PinPlan> pins) =>
        string.Join(
            ", ",
            pins.Select(p => p.Electrode.Length == 0 || p.Electrode == p.Number ? p.Number : $"{p.Number} ({p.Electrode})")
        );
}
