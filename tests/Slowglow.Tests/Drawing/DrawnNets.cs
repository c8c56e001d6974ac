using Slowglow.Sheets;

namespace Slowglow.Tests.Drawing;

/// <summary>What a drawing joins, found by following its wires as a reader would.</summary>
internal static class DrawnNets
{
    /// <summary>Groups of pins that the drawing joins, each sorted and written in one line; only groups of two and more.</summary>
    public static IReadOnlyList<string> Of(DrawnDocument drawing, Sheet sheet)
    {
        var known = sheet.Parts.SelectMany(p => p.Pins.Select(e => $"{p.Designator}.{e.Number}")).ToHashSet();
        var parent = new Dictionary<string, string>();
        for (var i = 0; i < drawing.Wires.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (Touch(drawing.Wires[i], drawing.Wires[j]) || Touch(drawing.Wires[j], drawing.Wires[i]))
                {
                    Join(parent, $"wire {i}", $"wire {j}");
                }
            }
        }

        var pieces = drawing.Pieces.ToArray();
        Hang(parent, pieces, drawing.Pins.Select(p => ($"pin {p.Pin}", p.At)));
        Hang(parent, pieces, drawing.Names.Select(n => ($"name {n.Net}", n.At)));
        Hang(parent, pieces, drawing.Chassis.Select(c => ($"name {NetTable.Ground}", c)));
        foreach (var (name, at) in drawing.Names)
        {
            foreach (var (pin, place) in drawing.Pins.Where(p => p.At == at))
            {
                Join(parent, $"name {name}", $"pin {pin}");
            }
        }

        return
        [
            .. drawing
                .Pins.Where(p => known.Contains(p.Pin))
                .GroupBy(p => Root(parent, $"pin {p.Pin}"))
                .Where(g => g.Count() > 1)
                .Select(g => string.Join(' ', g.Select(p => p.Pin).Order(StringComparer.Ordinal)))
                .Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>The same of the sheet.</summary>
    public static IReadOnlyList<string> Of(Sheet sheet) =>
        [
            .. sheet
                .Parts.SelectMany(p => p.Pins.Select(e => (Pin: $"{p.Designator}.{e.Number}", e.Net)))
                .GroupBy(p => p.Net)
                .Where(g => g.Count() > 1)
                .Select(g => string.Join(' ', g.Select(p => p.Pin).Order(StringComparer.Ordinal)))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>A wire joins another where one of its ends or corners lies on it; two that merely cross do not join.</summary>
    private static bool Touch(IReadOnlyList<(double X, double Y)> one, IReadOnlyList<(double X, double Y)> other) =>
        one.Any(p => other.Zip(other.Skip(1)).Any(s => new Piece(0, s.First, s.Second).Holds(p)));

    private static void Hang(
        Dictionary<string, string> parent,
        Piece[] pieces,
        IEnumerable<(string Node, (double X, double Y) At)> nodes
    )
    {
        foreach (var (node, at) in nodes)
        {
            foreach (var piece in pieces.Where(p => p.Holds(at)))
            {
                Join(parent, node, $"wire {piece.Wire}");
            }
        }
    }

    private static string Root(Dictionary<string, string> parent, string node)
    {
        while (parent.TryGetValue(node, out var up))
        {
            node = up;
        }

        return node;
    }

    private static void Join(Dictionary<string, string> parent, string a, string b)
    {
        var (one, other) = (Root(parent, a), Root(parent, b));
        if (one != other)
        {
            parent[one] = other;
        }
    }
}
