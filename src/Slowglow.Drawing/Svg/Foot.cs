using System.Globalization;
using Slowglow.Quantities;

namespace Slowglow.Drawing.Svg;

/// <summary>What stands under the drawing: how to read the figures, suspects in words, figures that found no room, the caution.</summary>
internal static class Foot
{
    public static IReadOnlyList<string> Lines(DrawingFigures figures, IReadOnlyList<PointFigure> homeless, int width)
    {
        List<string> lines = [];
        if (figures.Points.Count > 0)
        {
            lines.Add(
                "Volts dc against chassis, expected with the half-width of the band that 95 in 100 healthy units read within."
            );
        }

        if (figures.Points.Any(p => p.Mark is not null))
        {
            lines.Add("Measured: ● in band   ▲ high   ▼ low   ✕ dead.");
        }

        var suspects = figures.Suspicion.Where(s => s.Value >= 0.005).OrderByDescending(s => s.Value).Take(8).ToArray();
        if (suspects.Length > 0)
        {
            var shares = suspects.Select(s => $"{s.Key} {(100 * s.Value).ToString("0", CultureInfo.InvariantCulture)} %");
            lines.Add($"Suspects, shaded: {string.Join(", ", shares)}.");
        }

        var room = Math.Max(78, (int)(width * 1.5));
        string[] rest = [.. homeless.Where(h => Math.Abs(h.Nominal) >= FigureWords.Nothing).Select(Say)];
        if (rest.Length > 0)
        {
            lines.Add($"No room beside the wire: {string.Join(", ", rest)}.");
        }

        lines.Add(
            "Mains and HT can kill, also minutes after switch-off. Figures are expectations, not permission; local codes and licensed practice come first."
        );
        return [.. lines.SelectMany(l => Broken(l, room))];
    }

    private static IEnumerable<string> Broken(string text, int room)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + word.Length >= room)
            {
                yield return line;
                line = "";
            }

            line += line.Length > 0 ? " " + word : word;
        }

        yield return line;
    }

    private static string Say(PointFigure figure) => $"{figure.Where} {Engineering.Format(figure.Nominal, "V")}";
}
