using System.Globalization;
using System.Xml.Linq;

namespace Slowglow.Tests.Drawing;

/// <summary>A drawing read back from its SVG text alone: wires, pins, names, signs. It knows nothing of how the drawing was made.</summary>
internal sealed class DrawnDocument
{
    private const double Slack = 1.6;

    private readonly List<XElement> all;

    public DrawnDocument(string svg)
    {
        all = [.. XDocument.Parse(svg).Descendants()];
        Wires = [.. Paths("wire").Concat(Paths("lead")).Select(Points)];
        Pins = [.. All("circle", "pin").Select(e => (e.Attribute("data-pin")!.Value, Point(e, "cx", "cy")))];
        Names =
        [
            .. All("text", "tagname")
                .Concat(All("text", "railname"))
                .Select(e => (e.Value, Point(e.Attribute("data-at")!.Value))),
        ];
        Chassis = [.. Paths("chassis").Select(e => Point(e.Attribute("data-at")!.Value))];
        Dots = [.. All("circle", "dot").Select(e => Point(e, "cx", "cy"))];
    }

    /// <summary>Corners of every wire and of every lead to a sign.</summary>
    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> Wires { get; }
    public IReadOnlyList<(string Pin, (double X, double Y) At)> Pins { get; }
    public IReadOnlyList<(string Net, (double X, double Y) At)> Names { get; }
    public IReadOnlyList<(double X, double Y)> Chassis { get; }
    public IReadOnlyList<(double X, double Y)> Dots { get; }

    /// <summary>Straight pieces of all wires.</summary>
    public IEnumerable<Piece> Pieces => Wires.SelectMany((w, i) => w.Zip(w.Skip(1), (a, b) => new Piece(i, a, b)));

    /// <summary>Words on the drawing with the room they take at the least: narrower than any face would make them.</summary>
    public IReadOnlyList<Box> Texts() =>
        [
            .. all.Where(e =>
                    e.Name.LocalName == "text"
                    && !Has(e, "note")
                    && !Has(e, "title")
                    && !Has(e, "plus")
                    && !Has(e, "number")
                    && !Has(e, "inside")
                )
                .Select(TextBox),
        ];

    /// <summary>What of the words must stay clear of a symbol's box: a little less than all, for a triangle fills half of its own.</summary>
    public IReadOnlyList<Box> Cores() =>
        [.. Texts().Select(t => t with { Top = t.Top + Slack, Bottom = Math.Max(t.Top + Slack, t.Bottom - Slack) })];

    /// <summary>Bodies of the symbols: everything inked in a part but its leads, by part.</summary>
    public IReadOnlyList<Box> Bodies() => [.. all.Where(e => e.Name.LocalName == "g" && Has(e, "part")).Select(BodyBox)];

    public static double Read(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static bool Has(XElement element, string name) => element.Attribute("class")?.Value.Split(' ').Contains(name) == true;

    private IEnumerable<XElement> All(string element, string name) => all.Where(e => e.Name.LocalName == element && Has(e, name));

    private IEnumerable<XElement> Paths(string name) => All("path", name);

    private static (double, double) Point(XElement e, string x, string y) =>
        (Read(e.Attribute(x)!.Value), Read(e.Attribute(y)!.Value));

    private static (double, double) Point(string text) => text.Split(' ') is [var x, var y] ? (Read(x), Read(y)) : default;

    /// <summary>Wires are written with M, H and V alone.</summary>
    private static IReadOnlyList<(double X, double Y)> Points(XElement path)
    {
        List<(double X, double Y)> points = [];
        var d = path.Attribute("d")!.Value;
        foreach (var command in d.Replace("H", "|H").Replace("V", "|V").Split('|'))
        {
            points.Add(
                command[0] switch
                {
                    'M' => Point(command[1..]),
                    'H' => (Read(command[1..]), points[^1].Y),
                    'V' => (points[^1].X, Read(command[1..])),
                    _ => throw new FormatException(d),
                }
            );
        }

        return points;
    }

    private static Box TextBox(XElement e)
    {
        var (x, y) = Point(e, "x", "y");
        var small = Has(e, "figure") || Has(e, "netname") || Has(e, "measured") || Has(e, "next");
        var width = e.Value.Length * (small ? 4.3 : 5.0);
        var left = e.Attribute("text-anchor")?.Value switch
        {
            "end" => x - width,
            "middle" => x - (width / 2),
            _ => x,
        };
        // Height of capitals and figures, and what hangs below the line, as shares of the size of letters in DejaVu Sans.
        var size = small ? 9 : 10;
        var below = e.Value.Any("gjpqy,()".Contains) ? 0.21 * size : 0;
        return new(e.Value, left, y - (0.73 * size), left + width, y + below);
    }

    private static Box BodyBox(XElement part)
    {
        List<(double X, double Y)> points = [];
        foreach (
            var e in part.Elements()
                .Where(e => Has(e, "stroke") && !Has(e, "chassis") && (e.Attribute("d")?.Value.EndsWith('Z') ?? true))
        )
        {
            if (e.Name.LocalName == "circle")
            {
                var ((x, y), r) = (Point(e, "cx", "cy"), Read(e.Attribute("r")!.Value));
                points.AddRange([(x - r, y - r), (x + r, y + r)]);
            }
            else
            {
                points.AddRange(e.Attribute("d")!.Value.TrimEnd('Z').Split('M', 'L').Where(p => p.Length > 0).Select(Point));
            }
        }

        var name = part.Attribute("data-part")!.Value;
        return points.Count == 0
            ? new(name, 0, 0, 0, 0)
            : new(name, points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
    }
}
