using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Wiring;

namespace Slowglow.Drawing.Svg;

/// <summary>Junction dots: where three or more wires and pins of a net meet.</summary>
internal static class Dots
{
    public static IEnumerable<Cell> Of(Wired wired)
    {
        Dictionary<(Cell At, string Net), HashSet<Heading>> ways = [];
        foreach (var run in wired.Runs)
        {
            var cells = run.Cells().ToArray();
            for (var i = 1; i < cells.Length; i++)
            {
                var heading = Headings.All.First(h => h.Step() == cells[i] - cells[i - 1]);
                Add(ways, (cells[i - 1], run.Net), heading);
                Add(ways, (cells[i], run.Net), heading.Opposite());
            }
        }

        foreach (var tag in wired.Tags)
        {
            Add(ways, (tag.Lead[0], tag.Net), tag.Heading);
        }

        foreach (var pin in wired.Placed.SelectMany(p => p.Pins).Where(p => ways.ContainsKey((p.At, p.Net))))
        {
            Add(ways, (pin.At, pin.Net), pin.Out.Opposite());
        }

        return ways.Where(w => w.Value.Count > 2).Select(w => w.Key.At).Distinct().OrderBy(c => c.X).ThenBy(c => c.Y);
    }

    private static void Add(Dictionary<(Cell At, string Net), HashSet<Heading>> ways, (Cell, string) key, Heading heading)
    {
        if (!ways.TryGetValue(key, out var set))
        {
            ways[key] = set = [];
        }

        set.Add(heading);
    }
}
