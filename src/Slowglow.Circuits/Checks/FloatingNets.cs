using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Circuits.Checks;

/// <summary>Finds nets that no direct current reaches: they have no voltage of their own.</summary>
internal static class FloatingNets
{
    public static IEnumerable<Finding> Of(Sheet sheet)
    {
        var groups = new NetGroups();
        groups.Join(NetTable.Neutral, NetTable.Ground);
        groups.Join(NetTable.Live, NetTable.Ground);
        groups.Join(NetTable.Earth, NetTable.Ground);

        // Whatever is plugged in there holds it.
        foreach (var path in sheet.Signals)
        {
            groups.Join(path.In, NetTable.Ground);
        }

        foreach (var (a, b) in sheet.Parts.SelectMany(Joints.Of))
        {
            groups.Join(a, b);
        }

        var used = sheet.Parts.SelectMany(p => p.Pins.Select(pin => (Part: p, Pin: pin))).GroupBy(x => x.Pin.Net);
        var hanging = used.Where(g => g.Count() > 1 && !groups.Same(g.Key, NetTable.Ground)).ToList();
        foreach (var island in hanging.GroupBy(g => groups.Find(g.Key)))
        {
            yield return Describe(
                island.SelectMany(g => g.Select(x => x.Part)).Distinct().ToList(),
                island.Select(g => g.Key).ToList()
            );
        }
    }

    private static Finding Describe(List<Part> parts, List<string> nets)
    {
        var names = string.Join(", ", parts.Take(4).Select(p => p.Designator));
        var more = parts.Count > 4 ? " and others" : "";
        if (parts.Any(p => p is TransformerPart))
        {
            return new Finding(
                Severity.Warning,
                parts[0].Place,
                $"net {nets[0]} and what it feeds have no connection to GND: voltages there float",
                "connect one side to GND if the drawing does",
                nets[0]
            );
        }

        return new Finding(
            Severity.Warning,
            parts[0].Place,
            $"net {nets[0]} hangs in the air: only {names}{more} reach{(parts.Count == 1 ? "es" : "")} it, and no direct current flows there",
            "look for a missing resistor or a misspelt net name",
            nets[0]
        );
    }
}
