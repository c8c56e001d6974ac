using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>Colour bands to a value, or a value to its bands (IEC 60062).</summary>
public sealed class ColourSum : BenchSum
{
    public override string Key => "colours";
    public override string Title => "Colour code";

    public override IReadOnlyList<SumField> Fields =>
        [new("bands", "Bands, or a value with its tolerance", Unit.None, "yellow violet orange gold")];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var text = given.Word("bands").ToLowerInvariant().Replace("gray", "grey", StringComparison.Ordinal);
        var words = text.Split([' ', ',', ';', '-'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return Wrong("There is nothing to read.", "Type bands (yellow violet orange gold) or a value (47k 5 %).");
        }

        return words.All(w => w.All(char.IsAsciiLetter)) ? OfBands(words) : OfValue(text);
    }

    private static Parsed<SumAnswer> OfBands(string[] bands)
    {
        if (bands.FirstOrDefault(b => !ColourCode.Colours.Contains(b)) is { } unknown)
        {
            return Wrong($"\"{unknown}\" is no band.", $"Bands are {string.Join(", ", ColourCode.Colours)}.");
        }

        if (ColourCode.Read(bands) is not { } read)
        {
            return Wrong(
                "These bands are no value.",
                "Three to six of them, the digits first; read from the end that gold or silver is not on."
            );
        }

        return Right(
            new SumAnswer(
                [
                    new("value", $"{Engineering.Drawing(read.Ohms)} ({Engineering.Format(read.Ohms, "ohm")})"),
                    new("tolerance", Percent(read.Tolerance)),
                    new(
                        "a good one reads",
                        $"{Say(read.Ohms * (1 - read.Tolerance), "ohm")} to {Say(read.Ohms * (1 + read.Tolerance), "ohm")}"
                    ),
                ],
                [
                    PreferredSeries.SeriesOf(read.Ohms) is { } series
                        ? $"A value of E{series}."
                        : "No preferred series holds this value: read it once more from the other end.",
                ]
            )
        );
    }

    private static Parsed<SumAnswer> OfValue(string text)
    {
        var words = text.Replace("%", " %", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var tolerance = 0.05;
        if (words.Length >= 2 && words[^1] == "%")
        {
            if (!QuantityText.TryRead(words[^2] + "%", Unit.Percent, out var part))
            {
                return Wrong($"\"{words[^2]} %\" is no tolerance.", "Type it as 47k 5 %.");
            }

            (tolerance, words) = (part.Value, words[..^2]);
        }

        if (!QuantityText.TryRead(string.Concat(words), Unit.Ohm, out var ohms) || !(ohms.Value > 0))
        {
            return Wrong(
                $"\"{text}\" is neither bands nor a value.",
                "Type bands (yellow violet orange gold) or a value (47k 5 %)."
            );
        }

        return ColourCode.Write(ohms.Value, tolerance) is { } bands
            ? Right(
                new SumAnswer(
                    [
                        new("bands", string.Join(' ', bands)),
                        new("of", $"{Engineering.Drawing(ohms.Value)}, {Percent(tolerance)}"),
                    ],
                    [
                        bands.Count == 4
                            ? "Two digits, how many noughts, the tolerance."
                            : "Three digits, how many noughts, the tolerance.",
                    ]
                )
            )
            : Wrong("No bands say that.", "Three digits at most, and 0.02 % to 10 %: 47k 5 %.");
    }

    private static string Percent(double part) => (100 * part).ToString("0.###", CultureInfo.InvariantCulture) + " %";
}
