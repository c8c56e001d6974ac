using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Wiring;

/// <summary>Draws the rails of a strip: above everything, highest volts on top; those below chassis under everything.</summary>
internal static class RailLines
{
    private const int Spacing = 2;

    public static IReadOnlyList<RailLine> Of(IReadOnlyList<Placed> placed, NetRoles roles)
    {
        var taps = placed
            .SelectMany(p => p.Pins)
            .Where(p => p.Tie == PinTie.RailLine)
            .GroupBy(p => p.Net)
            .ToDictionary(g => g.Key, g => (IReadOnlyList<int>)[.. g.Select(p => p.At.X).Order()]);
        var outline = placed.Select(p => p.Outline).Aggregate((a, b) => a.With(b));
        string[] above = [.. taps.Keys.Where(n => !roles.IsBelow(n)).OrderBy(roles.Height)];
        string[] below = [.. taps.Keys.Where(roles.IsBelow).OrderByDescending(roles.Height)];
        return
        [
            .. above.Select((net, i) => Line(net, outline.Top - 3 - (Spacing * i), taps, above[i..], outline)),
            .. below.Select((net, i) => Line(net, outline.Bottom + 3 + (Spacing * i), taps, below[i..], outline)),
        ];
    }

    /// <summary>The name stands left of the first tap, further left where ways to the rails beyond would run through it.</summary>
    private static RailLine Line(string net, int y, Dictionary<string, IReadOnlyList<int>> taps, string[] beyond, Rect outline)
    {
        var own = taps[net];
        var width = TextSize.Cells(net) + 1;
        var through = beyond.Skip(1).SelectMany(n => taps[n]).ToHashSet();
        var right = own[0] - 1;
        while (right - width > outline.Left - width && Enumerable.Range(right - width, width + 2).Any(through.Contains))
        {
            right--;
        }

        right = Enumerable.Range(right - width, width + 2).Any(through.Contains) ? outline.Left - 2 : right;
        return new(net, y, right + 1, own[^1], new Rect(right - width, y, right, y));
    }
}
