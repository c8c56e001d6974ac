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
        var points = Points(setup, cancel);
        var potentials = points.ToDictionary(p => p.Net, p => p.Nominal);
        var layout = ServiceDrawing.LayOut(unit.Sheet, potentials, style, cancel);
        var figures = new DrawingFigures { Potentials = potentials, Points = points };
        return new(ServiceDrawing.Write(layout, figures), layout.Crossings, layout.Tags, layout);
    }

    private PointFigure[] Points(Setup setup, CancellationToken cancel)
    {
        if (setup.PowerOff)
        {
            return [];
        }

        var dc = MeterPoints.Live(unit.Sheet, setup).Where(p => p.Kind == ProbeKind.Dc).ToArray();
        return
        [
            .. new ExpectReadings(unit)
                .Run(setup, dc, cancel)
                .Where(e => double.IsFinite(e.Nominal))
                .DistinctBy(e => e.Probe.Red)
                .Select(e => new PointFigure(e.Probe.Red, e.Probe.Where, e.Nominal, e.Low, e.High)),
        ];
    }
}
