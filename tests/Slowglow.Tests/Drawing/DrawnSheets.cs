using System.Collections.Concurrent;
using System.Globalization;
using Slowglow.Drawing;
using Slowglow.Sheets;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>
/// The sheets whose drawings are approved: three demo units, eight demo sheets, twelve textbook circuits. Their figures were worked out
/// once and are kept beside the drawings, so that a better solver does not redraw them.
/// </summary>
internal static class DrawnSheets
{
    private static readonly ConcurrentDictionary<string, (DrawingLayout Layout, string Svg)> Drawn = [];

    public static TheoryData<string> Names() => [.. Paths().Keys.Order(StringComparer.Ordinal)];

    public static (DrawingLayout Layout, string Svg) Draw(string name) => Drawn.GetOrAdd(name, DrawNow);

    public static string PathOf(string name) => Paths()[name];

    public static string ApprovedPath(string name) => Path.Combine(Folder, "Approved", name + ".svg");

    public static string FiguresPath(string name) => Path.Combine(Folder, "Figures", name + ".tsv");

    public static Sheet Sheet(string name)
    {
        var read = SheetReader.Read(File.ReadAllText(Paths()[name]));
        return read.Value ?? throw new InvalidOperationException($"{name}: {read.Findings[0]}");
    }

    private static string Folder => Path.Combine(Repository.Root, "tests", "Slowglow.Tests", "Drawing");

    private static Dictionary<string, string> Paths()
    {
        var units = Directory
            .GetDirectories(Path.Combine(Repository.Root, "demo"))
            .Select(d => (Path.GetFileName(d), Path.Combine(d, "sheet.yaml")));
        string[] folders = [Path.Combine(Repository.Root, "demo", "sheets"), Path.Combine(Folder, "Textbook")];
        var alone = folders
            .SelectMany(f => Directory.GetFiles(f, "*.yaml"))
            .Select(f => (Path.GetFileNameWithoutExtension(f), f));
        return units
            .Where(u => File.Exists(u.Item2))
            .Concat(alone)
            .Where(s => File.Exists(FiguresPath(s.Item1)))
            .ToDictionary(s => s.Item1, s => s.Item2);
    }

    private static (DrawingLayout, string) DrawNow(string name)
    {
        var points = Figures(name);
        var potentials = points.ToDictionary(p => p.Net, p => p.Nominal);
        var layout = ServiceDrawing.LayOut(Sheet(name), potentials, new DrawingStyle());
        return (layout, ServiceDrawing.Write(layout, new DrawingFigures { Points = points }));
    }

    public static IReadOnlyList<PointFigure> Figures(string name) =>
        [
            .. File.ReadLines(FiguresPath(name))
                .Select(l => l.Split('\t'))
                .Select(f => new PointFigure(f[0], f[1], Read(f[2]), Read(f[3]), Read(f[4]))),
        ];

    private static double Read(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
