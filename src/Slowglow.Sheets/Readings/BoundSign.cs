namespace Slowglow.Sheets.Readings;

/// <summary>What stands between the place and the figure: <c>=</c>, <c>&gt;</c>, <c>&lt;</c>, or <c>= &gt;</c>.</summary>
/// <param name="At">Where the place ends; -1 when there is no sign.</param>
/// <param name="ValueAt">Where the figure begins.</param>
/// <param name="Bound">Above or below; null for an ordinary figure.</param>
internal readonly record struct BoundSign(int At, int ValueAt, MeterSaid? Bound)
{
    internal static BoundSign In(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        var at = equals >= 0 ? equals : FirstBound(line);
        if (at < 0)
        {
            return new(-1, -1, null);
        }

        // ">= 600 V" has its bound before the '='.
        var before = equals > 0 ? Bounds(line[equals - 1]) : null;
        if (before is not null)
        {
            return new(at - 1, at + 1, before);
        }

        var value = equals >= 0 ? at + 1 : at;
        while (value < line.Length && line[value] == ' ')
        {
            value++;
        }

        var bound = value < line.Length ? Bounds(line[value]) : null;
        return bound is null ? new(at, at + 1, null) : new(at, value + 1, bound);
    }

    /// <summary>An arrow is no bound.</summary>
    private static int FirstBound(string line)
    {
        for (var i = 1; i < line.Length; i++)
        {
            if (Bounds(line[i]) is not null && line[i - 1] != '-')
            {
                return i;
            }
        }
        return -1;
    }

    private static MeterSaid? Bounds(char sign) =>
        sign switch
        {
            '>' or '\u2265' => MeterSaid.Above,
            '<' or '\u2264' => MeterSaid.Below,
            _ => null,
        };
}
