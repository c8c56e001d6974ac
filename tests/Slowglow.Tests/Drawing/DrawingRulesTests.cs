using Slowglow.Drawing;
using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>What every drawing keeps to, found out from its SVG text.</summary>
public class DrawingRulesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static TheoryData<string> Names() => DrawnSheets.Names();

    [Theory]
    [MemberData(nameof(Names))]
    public void Nets_come_back_from_the_drawing_as_the_sheet_has_them(string name) =>
        Assert.Equal(
            DrawnNets.Of(DrawnSheets.Sheet(name)),
            DrawnNets.Of(new DrawnDocument(DrawnSheets.Draw(name).Svg), DrawnSheets.Sheet(name))
        );

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_overlaps(string name)
    {
        var drawing = new DrawnDocument(DrawnSheets.Draw(name).Svg);
        Assert.Empty(Overlaps(drawing.Bodies(), drawing.Bodies()));
        Assert.Empty(Overlaps(drawing.Texts(), drawing.Texts()));
        Assert.Empty(Overlaps(drawing.Bodies(), drawing.Cores()));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_wire_runs_through_a_symbol_or_its_words(string name)
    {
        var drawing = new DrawnDocument(DrawnSheets.Draw(name).Svg);
        var boxes = drawing.Bodies().Concat(drawing.Texts()).ToArray();
        Assert.Empty(
            drawing.Pieces.SelectMany(p =>
                boxes.Where(p.RunsThrough).Select(b => $"{b.Name} at {b.Left} {b.Top}, wire {p.From} {p.To}")
            )
        );
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Rails_stand_in_the_order_of_their_volts(string name)
    {
        var volts = DrawnSheets.Figures(name).ToDictionary(f => f.Net, f => f.Nominal);
        foreach (var strip in DrawnSheets.Draw(name).Layout.Strips.Where(s => !s.IsSupply))
        {
            var byHeight = strip.Wired.Rails.OrderBy(r => r.Y).Select(r => volts[r.Net]).ToArray();
            Assert.Equal(byHeight.OrderDescending(), byHeight);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_crossings_are_those_that_the_documentation_lists(string name)
    {
        var line = File.ReadLines(Path.Combine(House.Repository.Root, "docs", "drawing.md"))
            .Single(l => l.StartsWith($"| {name} |", StringComparison.Ordinal));
        var layout = DrawnSheets.Draw(name).Layout;
        Assert.Equal($"| {name} | {layout.Sheet.Parts.Count} | {layout.Crossings} | {layout.Tags} |", line);
    }

    /// <summary>Marks come in words and shape, not in colour alone; every part and point has a name that can be heard.</summary>
    [Fact]
    public void Marks_suspects_and_the_next_reading_are_said_in_words()
    {
        var layout = DrawnSheets.Draw("kittiwake-15").Layout;
        PointFigure[] points =
        [
            new("V1.6", "V1.6", 154, 140, 168, "62 V", ReadingMark.Low),
            new("HT4", "HT4", 240, 223, 257, "290 V", ReadingMark.High),
            new("V2.1", "V2.1", 161, 147, 175, "0.2 V", ReadingMark.Dead),
            new("HT1", "HT1", 311, 290, 332, "315 V", ReadingMark.InBand),
        ];
        var svg = ServiceDrawing.Write(
            layout,
            new DrawingFigures
            {
                Points = points,
                Suspicion = new Dictionary<string, double> { ["R10"] = 0.62 },
                Next = new NextMark(["V1.6"], "600 V dc", "live HT"),
            }
        );
        Assert.Contains(">▼ 62 V low<", svg, StringComparison.Ordinal);
        Assert.Contains(">▲ 290 V high<", svg, StringComparison.Ordinal);
        Assert.Contains(">✕ 0.2 V dead<", svg, StringComparison.Ordinal);
        Assert.Contains(">● 315 V in band<", svg, StringComparison.Ordinal);
        Assert.Contains(">next: 600 V dc<", svg, StringComparison.Ordinal);
        Assert.Contains(">caution: live HT<", svg, StringComparison.Ordinal);
        Assert.Contains("R10, 100k 1 W", svg, StringComparison.Ordinal);
        Assert.Contains("share of suspicion 62 %", svg, StringComparison.Ordinal);
        Assert.Contains("data-point=\"V1.6\" tabindex=\"0\"", svg, StringComparison.Ordinal);
        Assert.Equal(DrawnNets.Of(layout.Sheet), DrawnNets.Of(new DrawnDocument(svg), layout.Sheet));
    }

    [Fact]
    public void A_setting_chooses_the_zigzag()
    {
        var sheet = DrawnSheets.Sheet("common-cathode");
        var box = ServiceDrawing.Write(
            ServiceDrawing.LayOut(sheet, new Dictionary<string, double>(), new DrawingStyle(), Stop),
            DrawingFigures.None
        );
        var zigzag = ServiceDrawing.Write(
            ServiceDrawing.LayOut(sheet, new Dictionary<string, double>(), new DrawingStyle(true), Stop),
            DrawingFigures.None
        );
        Assert.NotEqual(box, zigzag);
        Assert.Equal(DrawnNets.Of(sheet), DrawnNets.Of(new DrawnDocument(zigzag), sheet));
    }

    internal static IEnumerable<string> Overlaps(IReadOnlyList<Box> some, IReadOnlyList<Box> others) =>
        some.SelectMany(
            (a, i) =>
                others
                    .Where((b, j) => (!ReferenceEquals(some, others) || j > i) && !a.Equals(b) && a.Meets(b))
                    .Select(b => $"{a} over {b}")
        );
}
