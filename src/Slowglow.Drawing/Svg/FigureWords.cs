using Slowglow.Quantities;

namespace Slowglow.Drawing.Svg;

/// <summary>Says a point's figures: its name where it has one, what it should read, what it read.</summary>
internal static class FigureWords
{
    /// <summary>Volts below which a point is taken to stand at chassis; the drawing then writes no figure.</summary>
    internal const double Nothing = 0.02;

    public static IReadOnlyList<FigureLine> Lines(PointFigure figure, bool isNamed, NextMark? next)
    {
        List<FigureLine> lines = [];
        if (!isNamed && !figure.Where.Contains('.', StringComparison.Ordinal))
        {
            lines.Add(new(figure.Where, "netname"));
        }

        if (double.IsFinite(figure.Nominal) && (Math.Abs(figure.Nominal) >= Nothing || figure.Measured is not null))
        {
            lines.Add(new(Expected(figure), "figure"));
        }

        if (figure is { Measured: { } measured, Mark: { } mark })
        {
            lines.Add(new($"{Sign(mark)} {measured} {Say(mark)}", $"measured {Class(mark)}"));
        }

        if (next is not null)
        {
            lines.Add(new($"next: {next.Range}", "next"));
            if (next.Caution is { } caution)
            {
                lines.Add(new($"caution: {caution}", "next"));
            }
        }

        return lines;
    }

    /// <summary>All of it in a sentence, for those who hear the drawing.</summary>
    public static string Sentence(PointFigure figure)
    {
        var expected = double.IsFinite(figure.Nominal)
            ? $", should read {Engineering.Format(figure.Nominal, "V")}, {Engineering.Format(figure.Low, "V")} to {Engineering.Format(figure.High, "V")}"
            : "";
        var measured = figure is { Measured: { } value, Mark: { } mark } ? $"; measured {value}, {Say(mark)}" : "";
        return $"{figure.Where}{expected}{measured}";
    }

    public static string Say(ReadingMark mark) =>
        mark switch
        {
            ReadingMark.High => "high",
            ReadingMark.Low => "low",
            ReadingMark.Dead => "dead",
            _ => "in band",
        };

    private static string Sign(ReadingMark mark) =>
        mark switch
        {
            ReadingMark.High => "▲",
            ReadingMark.Low => "▼",
            ReadingMark.Dead => "✕",
            _ => "●",
        };

    private static string Class(ReadingMark mark) => mark == ReadingMark.InBand ? "in-band" : Say(mark);

    private static string Expected(PointFigure figure)
    {
        var nominal = Engineering.Format(figure.Nominal, "V");
        var half = (figure.High - figure.Low) / 2;
        if (Math.Abs(figure.Nominal) < Nothing)
        {
            return "0 V";
        }

        var space = nominal.IndexOf(' ', StringComparison.Ordinal);
        var scale = nominal[(space + 1)..] == "mV" ? 1e3 : 1;
        return double.IsFinite(half) && half > 0
            ? $"{nominal[..space]} ±{Engineering.Format(half * scale, "", 2).Trim()} {nominal[(space + 1)..]}"
            : nominal;
    }
}
