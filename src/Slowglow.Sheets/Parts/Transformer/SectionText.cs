using Slowglow.Quantities;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Reads the figures of a tapped winding: <c>230 V</c>, <c>12-0-12 V</c>, <c>0-110-230 V</c>, <c>2x12 V</c>.</summary>
internal static class SectionText
{
    /// <summary>Volts of each section between neighbouring pins; null when the text is none.</summary>
    internal static IReadOnlyList<double>? Read(string text, Unit unit)
    {
        var marks = Marks(text, unit);
        if (marks is null)
        {
            return null;
        }

        if (marks.Count == 1)
        {
            return marks[0] > 0 ? marks : null;
        }

        // Figures with a zero among them are marks on the taps; without one they are the sections themselves.
        var sections = marks.Contains(0) || Rising(marks) ? [.. marks.Zip(marks.Skip(1), (a, b) => Math.Abs(a - b))] : marks;
        return sections.All(v => v > 0) ? sections : null;
    }

    /// <summary>Relative turns of each section from the impedances at its taps: turns go with the root.</summary>
    internal static IEnumerable<double> ReadImpedance(string text)
    {
        var marks = Marks(text, Unit.Ohm);
        if (marks is null || marks.Any(m => m < 0))
        {
            return [];
        }

        var turns = marks.Select(Math.Sqrt).ToList();
        return turns.Count == 1 ? turns : turns.Zip(turns.Skip(1), (a, b) => Math.Abs(a - b));
    }

    private static bool Rising(IReadOnlyList<double> marks) => marks.Zip(marks.Skip(1), (a, b) => a < b).All(up => up);

    private static List<double>? Marks(string text, Unit unit)
    {
        var plain = text.Replace(" CT", "", StringComparison.OrdinalIgnoreCase).Trim();
        var times = plain.IndexOf('x', StringComparison.OrdinalIgnoreCase);
        if (times > 0 && int.TryParse(plain[..times].Trim(), out var count) && count is > 1 and < 10)
        {
            return QuantityText.TryRead(plain[(times + 1)..].Trim(), unit, out var each)
                ? [.. Enumerable.Repeat(each.Value, count)]
                : null;
        }

        var pieces = plain.Split(['-', '\u2013'], StringSplitOptions.TrimEntries);
        if (!QuantityText.TryRead(pieces[^1], unit, out var last))
        {
            return null;
        }

        var marks = new List<double>();
        foreach (var piece in pieces[..^1])
        {
            if (!QuantityText.TryRead(piece, unit, out var mark) || mark.Value < 0)
            {
                return null;
            }

            marks.Add(mark.Value);
        }

        marks.Add(last.Value);
        return marks;
    }
}
