using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>A part with two ends in line, first end on top.</summary>
internal abstract class TwoEnded : Symbol
{
    /// <summary>Half of the length, in grid units.</summary>
    protected const int Reach = 2;

    protected TwoEnded(Part part, string value, IEnumerable<Stroke> strokes, int reach = Reach)
        : base(part, part.Designator, [value])
    {
        var (first, second) = (part.Pins[0], part.Pins[1]);
        Pins =
        [
            new($"{part.Designator}.{first.Number}", first.Net, new(0, -reach), Heading.Up),
            new($"{part.Designator}.{second.Number}", second.Net, new(0, reach), Heading.Down),
        ];
        Body = new(-1, 1 - reach, 1, reach - 1);
        Turning = Turning.Quarter;
        Strokes = [.. strokes];
    }

    /// <summary>Leads from the pins to the body's ends.</summary>
    protected static IEnumerable<Stroke> Leads(double bodyHalf) =>
        [Line.Of((0, -Reach), (0, -bodyHalf)), Line.Of((0, bodyHalf), (0, Reach))];
}
