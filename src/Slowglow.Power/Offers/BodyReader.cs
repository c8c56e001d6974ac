using System.Globalization;
using System.Text.RegularExpressions;
using Slowglow.Sheets;

namespace Slowglow.Power.Offers;

/// <summary>Reads sizes as the trade writes them: <c>size 96x80x75mm; holes 80x64mm</c>.</summary>
public static partial class BodyReader
{
    private const string Example = "write size 100x85x90mm; holes 84x60mm";

    /// <summary>The room where the old one stood; unknown when nothing was said. Width, depth, height; then the holes.</summary>
    public static Parsed<Body> Place(string text)
    {
        var (size, holes) = ("", "");
        foreach (var piece in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var words = piece.Split(' ', 2, StringSplitOptions.TrimEntries);
            switch (words[0].ToLowerInvariant())
            {
                case "size" when words.Length == 2:
                    size = words[1];
                    break;
                case "holes" when words.Length == 2:
                    holes = words[1];
                    break;
                default:
                    return Wrong(piece);
            }
        }

        return Of(size, holes) is { } body ? new(body, []) : Wrong(text);
    }

    /// <summary>Null when a length cannot be read.</summary>
    public static Body? Of(string size, string holes) =>
        Lengths(size, 3) is { } s && Lengths(holes, 2) is { } h ? new Body(s[0], s[1], s[2], h[0], h[1]) : null;

    private static double[]? Lengths(string text, int count)
    {
        if (text.Trim().Length == 0)
        {
            return [.. Enumerable.Repeat(double.NaN, count)];
        }

        var match = Shape().Match(text.Trim());
        double[] read = [.. match.Groups["n"].Captures.Select(c => double.Parse(c.Value, CultureInfo.InvariantCulture))];
        return match.Success && read.Length == count && read.All(r => r is > 0 and < 1000) ? read : null;
    }

    private static Parsed<Body> Wrong(string text) =>
        new(null, [new(Severity.Error, Sheets.Place.None, $"\"{text}\" is no room for a transformer", Example)]);

    [GeneratedRegex(@"^(?<n>\d+(\.\d+)?)\s*(mm)?(\s*x\s*(?<n>\d+(\.\d+)?)\s*(mm)?)+$", RegexOptions.IgnoreCase)]
    private static partial Regex Shape();
}
