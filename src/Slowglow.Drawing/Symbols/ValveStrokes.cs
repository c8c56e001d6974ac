namespace Slowglow.Drawing.Symbols;

/// <summary>What valves have in common.</summary>
internal static class ValveStrokes
{
    public static IEnumerable<Stroke> Envelope() => [new Ring(0, 0, 2.1, Fill.Paper)];

    public static IEnumerable<Stroke> Anode() =>
        [Line.Of((0, -3), (0, -1.2)), Line.Solid((-1, -1.3), (1, -1.3), (1, -1.05), (-1, -1.05))];

    /// <summary>The cathode's hat, its lead straight below.</summary>
    public static IEnumerable<Stroke> Cathode() =>
        [Line.Of((-0.95, 1.5), (-0.95, 1.15), (0.95, 1.15), (0.95, 1.5)), Line.Of((0, 1.15), (0, 3))];

    /// <summary>A dashed grid at a height, its lead to the left.</summary>
    public static IEnumerable<Stroke> Grid(double y, int side = -1) =>
        [
            Line.Of((3 * side, y), (1.25 * side, y)),
            Line.Of((-1.05, y), (-0.6, y)),
            Line.Of((-0.22, y), (0.22, y)),
            Line.Of((0.6, y), (1.05, y)),
        ];
}
