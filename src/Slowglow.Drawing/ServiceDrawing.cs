using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Strips;
using Slowglow.Drawing.Svg;
using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;

namespace Slowglow.Drawing;

/// <summary>The service drawing of a sheet. Nobody places anything by hand.</summary>
public static class ServiceDrawing
{
    private const int Gap = 5;

    /// <summary>Lays a sheet out. The same sheet and potentials always give the same layout.</summary>
    /// <param name="sheet">Any sheet that was read without errors.</param>
    /// <param name="potentials">Volts dc by canonical net; nets may be missing.</param>
    public static DrawingLayout LayOut(
        Sheet sheet,
        IReadOnlyDictionary<string, double> potentials,
        DrawingStyle style,
        CancellationToken cancel = default
    )
    {
        var symbols = new SymbolBook(sheet, style.Zigzag).All();
        var roles = new NetRoles(sheet, potentials);
        var plan = new BandPlan(sheet, symbols, roles);
        var maker = new StripMaker(sheet, symbols, roles, plan.Depth);
        List<Strip> strips = [];
        var top = 0;
        foreach (var band in plan.Bands())
        {
            var strip = maker.Make(band, cancel);
            var outline = strip.Outline;
            strips.Add(strip.Moved(new Cell(-outline.Left, top - outline.Top)));
            top += outline.Height + Gap;
        }

        return new DrawingLayout(sheet, style, roles, strips);
    }

    /// <summary>
    /// The same layout with the values of another sheet, which takes a hundredth of the time; null when more than values differ, or when the
    /// new ones find no room where the old ones stood.
    /// </summary>
    public static DrawingLayout? Revalue(DrawingLayout layout, Sheet sheet)
    {
        if (!IsWiredAlike(layout.Sheet, sheet))
        {
            return null;
        }

        var relabelling = new Relabelling(new SymbolBook(sheet, layout.Style.Zigzag).All());
        List<Strip> strips = [];
        foreach (var strip in layout.Strips)
        {
            if (relabelling.Of(strip) is not { } revalued)
            {
                return null;
            }

            strips.Add(revalued);
        }

        return new DrawingLayout(sheet, layout.Style, layout.Roles, strips);
    }

    private static bool IsWiredAlike(Sheet a, Sheet b) =>
        a.Mains == b.Mains
        && a.Parts.Count == b.Parts.Count
        && a.Parts.Zip(b.Parts)
            .All(p =>
                p.First.Designator == p.Second.Designator
                && p.First.GetType() == p.Second.GetType()
                && p.First.Pins.SequenceEqual(p.Second.Pins)
            );

    /// <summary>The drawing as SVG text, with figures, marks and shades on it.</summary>
    /// <param name="standsAlone">True for a document of its own; false for a page that has <see cref="StyleSheet"/> already.</param>
    public static string Write(DrawingLayout layout, DrawingFigures figures, bool standsAlone = true) =>
        new SvgDrawing(layout, figures, standsAlone).Write();

    /// <summary>The style sheet for pages with drawings in them. They may set the --drawing-… properties.</summary>
    public static string StyleSheet => Look.Rules;
}
