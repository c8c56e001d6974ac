using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>Tells the sections of an envelope or package apart.</summary>
internal static class Sections
{
    /// <summary>Sections with pins of their own, in the order of their numbers.</summary>
    public static IReadOnlyList<Section> Of(Part part, Device device)
    {
        var byNumber = part.Pins.ToDictionary(p => p.Number);
        var groups = device.Pinout.Where(p => p.Section > 0).GroupBy(p => p.Section).OrderBy(g => g.Key).ToArray();
        return
        [
            .. groups.Select(g => new Section(
                part,
                groups.Length == 1 ? 0 : g.Key,
                g.Where(p => byNumber.ContainsKey(p.Number))
                    .DistinctBy(p => p.Electrode)
                    .ToDictionary(p => p.Electrode, p => byNumber[p.Number])
            )),
        ];
    }

    /// <summary>The part as one section, by its pins' electrodes.</summary>
    public static Section Single(Part part) =>
        new(part, 0, part.Pins.DistinctBy(p => Bare(p.Electrode)).ToDictionary(p => Bare(p.Electrode)));

    /// <summary>The electrode without its section's number: "a2" is "a"; a screen, "g2", stays what it is.</summary>
    public static string Bare(string electrode) =>
        electrode.Length > 1 && char.IsAsciiDigit(electrode[^1]) && electrode is not ("g2" or "g3") ? electrode[..^1] : electrode;
}
