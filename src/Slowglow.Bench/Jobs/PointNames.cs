using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Jobs;

/// <summary>Every name that a reading may begin with: nets, pins, parts and the inlet.</summary>
public static class PointNames
{
    private static readonly Dictionary<string, string> Electrodes = new(StringComparer.Ordinal)
    {
        ["a"] = "anode",
        ["g"] = "grid",
        ["k"] = "cathode",
        ["s"] = "screen",
        ["h"] = "heater",
        ["c"] = "collector",
        ["b"] = "base",
        ["e"] = "emitter",
        ["d"] = "drain",
    };

    /// <summary>Nets of the drawing first, then pins, then parts (across them).</summary>
    public static IReadOnlyList<PointName> Of(Sheet sheet)
    {
        var nets = sheet
            .Nets.Names.Where(n => n != NetTable.Ground && !n.Contains('.', StringComparison.Ordinal))
            .Select(n => new PointName(n, "net"));
        var pins = sheet.Parts.Where(p => p.Pins.Count > 2).SelectMany(p => p.Pins.Select(pin => Pin(p, pin)));
        var parts = sheet.Parts.Where(p => p.Pins.Count == 2).Select(p => new PointName(p.Designator, $"across {p.Description}"));
        return [.. nets, .. pins, .. parts, new(Probe.Inlet, "inlet current")];
    }

    private static PointName Pin(Part part, Pin pin)
    {
        var electrode =
            pin.Electrode.Length == 0 ? "pin" : Electrodes.GetValueOrDefault(pin.Electrode.TrimEnd('1', '2'), pin.Electrode);
        var own = pin.Net.StartsWith(part.Designator + ".", StringComparison.Ordinal);
        var joined = own ? "" : $", net {pin.Net}";
        return new($"{part.Designator}.{pin.Number}", $"{electrode} of {part.Designator} {part.Description}{joined}");
    }
}
