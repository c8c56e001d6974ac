using System.Globalization;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Jobs;

/// <summary>Completes a reading line: first a point, then a kind, then a setup.</summary>
public sealed class SuggestReading
{
    private const int Most = 8;
    private static readonly (string Word, string Detail)[] VoltKinds =
    [
        ("V", "volts DC"),
        ("V ac", "volts AC, rms"),
        ("V ripple", "the AC part of a rail, DC blocked"),
        ("V ac 1kHz", "level with the sheet's signal applied"),
    ];

    private static readonly (string Word, string Detail)[] ColdKinds =
    [
        ("ohm", "power off"),
        ("kohm", "power off"),
        ("V diode", "diode test, power off"),
    ];

    private readonly IReadOnlyList<PointName> points;
    private readonly IReadOnlyList<Setup> setups;

    /// <param name="setups">The chosen one first.</param>
    public SuggestReading(Sheet sheet, IReadOnlyList<Setup> setups)
    {
        points = PointNames.Of(sheet);
        this.setups = setups;
    }

    /// <summary>Ways on from what has been typed, likeliest first; empty when there is nothing to add.</summary>
    public IReadOnlyList<Suggestion> Run(string line)
    {
        var equals = line.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0)
        {
            return Points(line);
        }

        var after = line[(equals + 1)..];
        var on = after.LastIndexOf(" on ", StringComparison.Ordinal);
        return on >= 0 ? Setups(line, after[(on + 4)..]) : Kinds(line, after);
    }

    private List<Suggestion> Points(string line)
    {
        var start = line.LastIndexOf(' ') + 1;
        var (before, typed) = (line[..start], line[start..]);
        if (typed.Length == 0 && before.Trim().Length > 0 && !before.TrimEnd().EndsWith('-'))
        {
            return
            [
                new(before.TrimEnd() + " = ", "=", "then what the meter says"),
                new(before.TrimEnd() + " - ", "-", "across two points"),
            ];
        }

        var found = points
            .Where(p => p.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .OrderBy(p => p.Name.Length == typed.Length ? 0 : 1)
            .Take(Most);
        return [.. found.Select(p => new Suggestion(before + p.Name + " = ", p.Name, p.Detail))];
    }

    private List<Suggestion> Kinds(string line, string after)
    {
        var words = after.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return [];
        }

        if (words.Length == 1 && IsFigure(words[0]) && after.EndsWith(' '))
        {
            var cold = setups[0].PowerOff;
            return
            [
                .. (cold ? ColdKinds : VoltKinds)
                    .Concat(cold ? VoltKinds : ColdKinds)
                    .Select(k => new Suggestion(line + k.Word, k.Word, k.Detail)),
            ];
        }

        return words.Length > 1 && after.EndsWith(' ') ? Setups(line + "on ", "") : [];
    }

    private List<Suggestion> Setups(string line, string typed)
    {
        var before = line[..(line.Length - typed.Length)];
        return
        [
            .. setups
                .Where(s => s.Name.StartsWith(typed.Trim(), StringComparison.OrdinalIgnoreCase) && s.Name != typed.Trim())
                .Take(Most)
                .Select(s => new Suggestion(before + s.Name, "on " + s.Name, SetupKeys.Say(s))),
        ];
    }

    private static bool IsFigure(string word) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
