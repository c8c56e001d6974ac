using System.Globalization;
using System.Text.RegularExpressions;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Power.Rewinding;

/// <summary>
/// Reads what was measured on a transformer, a line each: <c>core = EI96</c>, <c>stack = 45 mm</c>, <c>P = 16 ohm</c>, <c>LT turns = 19</c>,
/// <c>P wire = 0.45 mm</c> (over the enamel), <c>P/HT = 0.94</c>, <c>off load = 60 mA</c>. What follows a # is a remark.
/// </summary>
public static partial class MeasuredReader
{
    private const string Example =
        "write core = EI96, stack = 45 mm, P = 16 ohm, LT turns = 19, P wire = 0.45 mm, P/HT = 0.94 or off load = 60 mA";

    private sealed record Names(string Designator, IReadOnlyList<string> Windings);

    public static Parsed<MeasuredTransformer> Read(IEnumerable<string> lines, string designator, IReadOnlyList<string> windings)
    {
        var part = new Names(designator, windings);
        var measured = MeasuredTransformer.Nothing;
        List<Finding> findings = [];
        foreach (var line in lines.Select(l => l.Split('#')[0].Trim().TrimStart('-').Trim()).Where(l => l.Length > 0))
        {
            try
            {
                measured = Add(measured, line, part);
            }
            catch (MeasuredException wrong)
            {
                findings.Add(
                    new(Severity.Error, Place.None, $"measured \"{line}\": {wrong.Message}", wrong.Remedy, part.Designator)
                );
            }
        }

        return new(findings.Count == 0 ? measured : null, findings);
    }

    private static MeasuredTransformer Add(MeasuredTransformer so, string line, Names part)
    {
        var at = line.IndexOf('=', StringComparison.Ordinal);
        if (at < 1)
        {
            throw new MeasuredException("there is no figure in it", Example);
        }

        var what = Spaces().Replace(line[..at].Trim(), " ");
        var figure = line[(at + 1)..].Trim();
        switch (what.ToLowerInvariant())
        {
            case "core":
                return so with { Core = CoreOf(figure) };
            case "stack":
                return so with { Stack = Millimetres(figure) };
            case "off load" or "offload" or "off-load":
                return so with { OffLoadAmps = Positive(figure, Unit.Ampere, "amperes, such as 60 mA") };
        }

        if (what.Contains('/'))
        {
            return so with { Ratios = [.. so.Ratios, Ratio(what, figure, part)] };
        }

        var words = what.Split(' ');
        var winding = WindingOf(words[0], part);
        return (words.Length == 1 ? "ohms" : words[1].ToLowerInvariant()) switch
        {
            "ohms" or "ohm" => so with { Ohms = With(so.Ohms, winding, Positive(figure, Unit.Ohm, "ohms, such as 16 ohm")) },
            "turns" => so with { Turns = With(so.Turns, winding, Positive(figure, Unit.None, "a number of turns, such as 19")) },
            "wire" => so with { Wire = With(so.Wire, winding, Millimetres(figure)) },
            var other => throw new MeasuredException($"'{other}' is nothing that is measured on a winding", Example),
        };
    }

    private static Dictionary<string, double> With(IReadOnlyDictionary<string, double> so, string key, double value) =>
        new(so) { [key] = value };

    /// <summary>The lamination of that name.</summary>
    internal static Lamination CoreOf(string text) =>
        Lamination.Named(text)
        ?? throw new MeasuredException(
            $"there is no core {text}",
            $"sizes known: {string.Join(", ", Lamination.All.Select(l => l.Name))}; measure the width of the iron and divide by three to find the tongue"
        );

    private static MeasuredRatio Ratio(string what, string figure, Names part)
    {
        var ends = what.Split('/', StringSplitOptions.TrimEntries);
        var (first, second) = (WindingOf(ends[0], part), WindingOf(ends[^1], part));
        if (ends.Length != 2 || first == second)
        {
            throw new MeasuredException("a ratio is between two different windings", "write P/HT = 0.94");
        }

        return new(first, second, Positive(figure, Unit.None, "a plain ratio above zero, such as 0.94"));
    }

    private static string WindingOf(string name, Names part) =>
        part.Windings.FirstOrDefault(w => w.Equals(name, StringComparison.OrdinalIgnoreCase))
        ?? throw new MeasuredException(
            $"{part.Designator} has no winding {name}",
            $"its windings are {string.Join(", ", part.Windings)}"
        );

    private static double Positive(string text, Unit unit, string right) =>
        QuantityText.TryRead(text, unit, out var quantity) && quantity.Value > 0
            ? quantity.Value
            : throw new MeasuredException($"'{text}' cannot be", $"it must be {right}");

    /// <summary>"45", "45 mm", "1.5 in".</summary>
    private static double Millimetres(string text)
    {
        var match = Length().Match(text);
        var scale = match.Groups["unit"].Value.StartsWith("in", StringComparison.OrdinalIgnoreCase) ? 25.4 : 1;
        return
            match.Success
            && double.TryParse(match.Groups["n"].Value, CultureInfo.InvariantCulture, out var figure)
            && figure > 0
            && figure * scale < 1000
            ? figure * scale
            : throw new MeasuredException(
                $"'{text}' is no length",
                "write millimetres, such as 45 mm, or inches, such as 1.5 in"
            );
    }

    [GeneratedRegex(@"^(?<n>\d*\.?\d+)\s*(?<unit>mm|in|inch|inches)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Length();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
