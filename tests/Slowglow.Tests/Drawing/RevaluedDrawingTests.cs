using System.Text.RegularExpressions;
using Slowglow.Drawing;
using Slowglow.Sheets;
using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>A drawing that gets new values keeps its places, and never at the price of words on top of something.</summary>
public sealed partial class RevaluedDrawingTests
{
    private static readonly DrawingStyle Style = new();

    [Fact]
    public void Nothing_moves_when_a_value_changes()
    {
        var (text, layout) = Laid("kittiwake-15");

        var revalued = ServiceDrawing.Revalue(
            layout,
            Read(text.Replace("R10:  100k 1W", "R10:  330k 1W", StringComparison.Ordinal))
        )!;

        var before = ServiceDrawing.Write(layout, DrawingFigures.None);
        var after = ServiceDrawing.Write(revalued, DrawingFigures.None);
        Assert.NotEqual(before, after);
        Assert.Equal(before.Split("100k").Length - 1, after.Split("100k").Length - 1 + (after.Split("330k").Length - 1));
        Assert.Equal(Figures().Replace(before, ""), Figures().Replace(after, ""));
    }

    [Fact]
    public void A_zigzag_stays_one()
    {
        var (text, boxes) = Laid("kittiwake-15");
        var layout = ServiceDrawing.LayOut(
            Read(text),
            new Dictionary<string, double>(),
            new(Zigzag: true),
            TestContext.Current.CancellationToken
        );

        var revalued = ServiceDrawing.Revalue(layout, Read(text))!;

        Assert.Equal(ServiceDrawing.Write(layout, DrawingFigures.None), ServiceDrawing.Write(revalued, DrawingFigures.None));
        Assert.NotEqual(ServiceDrawing.Write(boxes, DrawingFigures.None), ServiceDrawing.Write(revalued, DrawingFigures.None));
    }

    [Theory]
    [InlineData("R10:  100k 1W carbon        HT4 -> V1.6", "R10:  100k 1W carbon        HT3 -> V1.6")]
    [InlineData("R10:  100k 1W carbon        HT4 -> V1.6", "R99:  100k 1W carbon        HT4 -> V1.6")]
    [InlineData("volts: 230 V, frequency", "volts: 110 V, frequency")]
    public void Other_wiring_names_or_mains_want_a_drawing_of_their_own(string before, string after)
    {
        var (text, layout) = Laid("kittiwake-15");

        Assert.Null(ServiceDrawing.Revalue(layout, Read(text.Replace(before, after, StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("kittiwake-15")]
    [InlineData("linnet-12")]
    public void Long_values_stand_free_or_are_refused(string name)
    {
        var (text, layout) = Laid(name);
        var refused = 0;
        foreach (var line in Resistor().Matches(text).Select(m => m.Value))
        {
            var longer = Value().Replace(line, "1.23456M", 1);
            if (ServiceDrawing.Revalue(layout, Read(text.Replace(line, longer, StringComparison.Ordinal))) is not { } revalued)
            {
                refused++;
                continue;
            }

            var drawing = new DrawnDocument(ServiceDrawing.Write(revalued, DrawingFigures.None));
            var boxes = drawing.Bodies().Concat(drawing.Texts()).ToArray();
            Assert.Empty(drawing.Pieces.SelectMany(p => boxes.Where(p.RunsThrough).Select(b => $"{longer}: {b.Name}")));
            var texts = drawing.Texts().ToArray();
            Assert.Empty(
                texts.SelectMany((a, i) => texts.Skip(i + 1).Where(a.Meets).Select(b => $"{longer}: {a.Name} on {b.Name}"))
            );
        }

        Assert.InRange(refused, 0, Resistor().Count(text) - 1);
    }

    private static (string Text, DrawingLayout Layout) Laid(string name)
    {
        var text = File.ReadAllText(DrawnSheets.PathOf(name));
        return (
            text,
            ServiceDrawing.LayOut(Read(text), new Dictionary<string, double>(), Style, TestContext.Current.CancellationToken)
        );
    }

    private static Sheet Read(string text) => SheetReader.Read(text).Value!;

    [GeneratedRegex("100k|330k", RegexOptions.CultureInvariant)]
    private static partial Regex Figures();

    [GeneratedRegex(@"^  R\d+:.*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Resistor();

    [GeneratedRegex(@"(?<=:\s+)\S+", RegexOptions.CultureInvariant)]
    private static partial Regex Value();
}
