using System.Globalization;

namespace Slowglow.Workshop.Money;

/// <summary>Reads a figure of money as people type it: 12.50, 12,50, 1,250.00, 1.250,00, 1 250.</summary>
public static class TypedFigure
{
    /// <summary>Null when it is no figure. A sign alone before the last three digits parts thousands; any other last sign begins the decimals.</summary>
    public static decimal? Read(string typed)
    {
        var text = typed.Trim().Replace(" ", "", StringComparison.Ordinal).Replace("\u00a0", "", StringComparison.Ordinal);
        if (text.Length is 0 or > 20 || text.Any(c => !char.IsAsciiDigit(c) && c is not ('.' or ',' or '-')))
        {
            return null;
        }

        var last = text.LastIndexOfAny(['.', ',']);
        if (last >= 0)
        {
            var whole = text[..last];
            var parts = text[last] is var sign && whole.Contains(sign, StringComparison.Ordinal) ? text : null;
            var decimals =
                parts is not null || (text.Length - last == 4 && text[last] == ',' && whole.Trim('-').Length is > 0 and < 4)
                    ? ""
                    : "." + text[(last + 1)..];
            text =
                (decimals.Length == 0 ? text : whole)
                    .Replace(".", "", StringComparison.Ordinal)
                    .Replace(",", "", StringComparison.Ordinal) + decimals;
        }

        return decimal.TryParse(
            text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var figure
        )
            ? figure
            : null;
    }
}
