using Slowglow.Drawing;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>The service drawing of a unit, with what every point should read in a setup.</summary>
public sealed class DrawUnit(BenchUnit unit)
{
    /// <param name="setup">How the bench stands; with the power off the drawing carries no figures.</param>
    /// <param name="style">How symbols are drawn.</param>
    public UnitDrawing Run(Setup setup, DrawingStyle style, CancellationToken cancel = default)
    {
        var points = Points(Expected(setup, cancel));
        var layout = LayOut(points, style, cancel);
        var figures = new DrawingFigures { Points = points };
        return new(ServiceDrawing.Write(layout, figures), layout.Crossings, layout.Tags, layout);
    }

    /// <summary>The layout for a unit that stays on the bench while setups change: it follows the healthy unit at rated mains.</summary>
    public DrawingLayout LayOut(DrawingStyle style, CancellationToken cancel = default) =>
        LayOut(Points(Expected(Setup.Default, cancel)), style, cancel);

    /// <summary>Points of a drawing: dc against chassis, where there is a figure.</summary>
    internal static PointFigure[] Points(IReadOnlyList<Expectation> expected) =>
        [
            .. expected
                .Where(e => e.Probe.Kind == ProbeKind.Dc && !e.Probe.IsInlet && double.IsFinite(e.Nominal))
                .DistinctBy(e => e.Probe.Red)
                .Select(e => new PointFigure(e.Probe.Red, e.Probe.Where, e.Nominal, e.Low, e.High)),
        ];

    private DrawingLayout LayOut(PointFigure[] points, DrawingStyle style, CancellationToken cancel) =>
        ServiceDrawing.LayOut(unit.Sheet, points.ToDictionary(p => p.Net, p => p.Nominal), style, cancel);

    private IReadOnlyList<Expectation> Expected(Setup setup, CancellationToken cancel) =>
        setup.PowerOff
            ? []
            : new ExpectReadings(unit).Run(
                setup,
                [.. MeterPoints.Live(unit.Sheet, setup).Where(p => p.Kind == ProbeKind.Dc)],
                cancel
            );
}
