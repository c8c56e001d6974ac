using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Circuits.Solved;

/// <summary>Ways from net to net through resistors, wires and fuses as drawn, never by way of chassis.</summary>
internal sealed class ResistorLinks(Circuit circuit)
{
    private readonly ILookup<int, (int To, double Ohms)> links = circuit
        .Sheet.Parts.SelectMany(p => LinksOf(p, circuit))
        .ToLookup(l => l.From, l => (l.To, l.Ohms));

    /// <summary>Least ohms from one unknown to another; null when no way is shorter than <paramref name="most"/>.</summary>
    public double? Between(int from, int to, double most)
    {
        var reached = new Dictionary<int, double>();
        var open = new PriorityQueue<int, double>();
        open.Enqueue(from, 0);
        while (open.TryDequeue(out var row, out var ohms))
        {
            if (row == to)
            {
                return ohms;
            }

            if (!reached.TryAdd(row, ohms))
            {
                continue;
            }

            foreach (var link in links[row].Where(l => ohms + l.Ohms <= most))
            {
                open.Enqueue(link.To, ohms + link.Ohms);
            }
        }

        return null;
    }

    private static IEnumerable<(int From, int To, double Ohms)> LinksOf(Part part, Circuit circuit)
    {
        double? ohms = part switch
        {
            ResistorPart r => r.Ohms,
            WirePart or FusePart => 0,
            _ => null,
        };
        if (
            ohms is { } value
            && circuit.Rows.TryGetValue(part.Pins[0].Net, out var a)
            && circuit.Rows.TryGetValue(part.Pins[1].Net, out var b)
            && a >= 0
            && b >= 0
        )
        {
            yield return (a, b, value);
            yield return (b, a, value);
        }
    }
}
