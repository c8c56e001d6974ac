using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>Reads the limiter lamp at hand: <c>60W</c>, <c>60W+60W</c> for two side by side, nothing for the one that suits.</summary>
public static class LampWords
{
    private const double Least = 5;
    private const double Most = 2000;

    /// <summary>The lamp; a finding where a word is no lamp.</summary>
    public static Parsed<LampAtHand> Read(string words)
    {
        if (words.Trim().Length == 0)
        {
            return new(new LampAtHand(null), []);
        }

        var sum = 0.0;
        foreach (var word in words.Split('+', StringSplitOptions.TrimEntries))
        {
            if (!QuantityText.TryRead(word, Unit.Watt, out var watts) || watts.Value is not (>= Least and <= Most))
            {
                return new(
                    null,
                    [
                        new(
                            Severity.Error,
                            Place.None,
                            $"'{word}' is no lamp.",
                            "Write its watts, 5 to 2000, such as 60W, or 60W+60W for two side by side."
                        ),
                    ]
                );
            }

            sum += watts.Value;
        }

        return new(new LampAtHand(sum), []);
    }
}
