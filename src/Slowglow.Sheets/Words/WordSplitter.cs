using Slowglow.Quantities;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets;

/// <summary>Splits a line into words, each with its place.</summary>
internal static class WordSplitter
{
    internal const string Arrow = "->";

    /// <summary>Words at blanks; arrows stand alone, <c>c = A</c> is one word <c>c=A</c>.</summary>
    internal static List<Word> Split(YamlScalar scalar)
    {
        var text = scalar.Text;
        var words = new List<Word>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var arrow = i < text.Length ? ArrowLength(text, i) : 0;
            var ends = i == text.Length || char.IsWhiteSpace(text[i]) || arrow > 0;
            if (ends && start >= 0)
            {
                words.Add(new Word(text[start..i], scalar.At(start)));
                start = -1;
            }

            if (arrow > 0)
            {
                words.Add(new Word(Arrow, scalar.At(i)));
                i += arrow - 1;
            }
            else if (!ends && start < 0)
            {
                start = i;
            }
        }

        return JoinEquals(words);
    }

    private static int ArrowLength(string text, int at) =>
        text[at] == '\u2192' ? 1
        : text.AsSpan(at).StartsWith("-->", StringComparison.Ordinal) ? 3
        : text.AsSpan(at).StartsWith("->", StringComparison.Ordinal) ? 2
        : 0;

    private static List<Word> JoinEquals(List<Word> words)
    {
        for (var i = 1; i < words.Count; i++)
        {
            var glue = words[i].Text == "=" || (words[i].Text.StartsWith('=') && words[i].Text.Length > 1);
            var trailing = words[i - 1].Text.EndsWith('=') && words[i - 1].Text.Length > 1 && words[i].Text != Arrow;
            if ((glue || trailing) && words[i - 1].Text != Arrow)
            {
                words[i - 1] = words[i - 1] with { Text = words[i - 1].Text + words[i].Text };
                words.RemoveAt(i--);
            }
        }

        return words;
    }

    /// <summary>Joins a number with the unit after a blank: <c>4.7 kohm</c>, <c>5 %</c>, <c>1/2 W</c>.</summary>
    internal static List<Word> JoinUnits(List<Word> words)
    {
        var joined = new List<Word>(words);
        for (var i = 1; i < joined.Count; i++)
        {
            var (number, unit) = (joined[i - 1].Text, joined[i].Text);
            var prefixed = char.IsLetter(number[^1]);
            if (
                QuantityText.TryRead(number, out var alone)
                && alone.Unit == Unit.None
                && QuantityText.IsUnit(unit)
                && (!prefixed || unit.Length > 1)
                && QuantityText.TryRead(number + unit, out _)
            )
            {
                joined[i - 1] = joined[i - 1] with { Text = number + " " + unit };
                joined.RemoveAt(i--);
            }
        }

        return joined;
    }
}
