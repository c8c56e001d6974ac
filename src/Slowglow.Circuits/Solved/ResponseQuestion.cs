using System.Numerics;

namespace Slowglow.Circuits.Solved;

/// <summary>Response of a path by frequency, with its corners.</summary>
internal sealed class ResponseQuestion
{
    private const int Halvings = 24;
    private static readonly double HalfPower = Math.Sqrt(0.5);
    private readonly SignalSweep sweep;
    private readonly SmallSpread spread;
    private readonly double volts;
    private readonly double referenceHertz;
    private readonly (Complex Gain, double[] Moves) reference;

    public ResponseQuestion(AskedWorld asked, Building.Fixtures.PathFixture path, double referenceHertz)
    {
        this.referenceHertz = referenceHertz;
        sweep = new SignalSweep(asked, path);
        spread = new SmallSpread(asked);
        volts = path.Path.LevelVolts;
        reference = With(referenceHertz);
    }

    /// <param name="hertz">From low to high; close enough that no corner hides between two.</param>
    public FrequencyResponse Ask(IReadOnlyList<double> hertz)
    {
        List<ResponsePoint> points = [.. hertz.Select(Point)];
        return new(points, referenceHertz, LowCorner(points), HighCorner(points));
    }

    /// <summary>Frequencies evenly spaced by their logarithm.</summary>
    public static double[] Decades(double from, double to, int perDecade)
    {
        var steps = Math.Max(1, (int)Math.Ceiling((Math.Log10(to / from) * perDecade) - 1e-9));
        return [.. Enumerable.Range(0, steps + 1).Select(k => from * Math.Pow(to / from, (double)k / steps))];
    }

    private ResponsePoint Point(double hertz)
    {
        var (gain, moves) = With(hertz);
        var relative = gain.Magnitude / reference.Gain.Magnitude;
        var sigma = SmallSpread.Sigma(moves.Zip(reference.Moves, (m, r) => m - r));
        return new(
            hertz,
            volts * gain.Magnitude,
            20 * Math.Log10(relative),
            gain.Phase * 180 / Math.PI,
            20 / Math.Log(10) * sigma
        );
    }

    private Complex Gain(double hertz)
    {
        var x = sweep.At(hertz).Driven();
        return sweep.Path!.Out < 0 ? 0 : x[sweep.Path.Out];
    }

    private (Complex Gain, double[] Moves) With(double hertz)
    {
        var x = sweep.At(hertz).Driven();
        if (sweep.Path!.Out < 0)
        {
            return (0, []);
        }

        var gain = x[sweep.Path.Out];
        return (gain, spread.OfMagnitude(sweep, x, sweep.Signal.Adjoint(sweep.Path.Out, -1), gain));
    }

    private bool Holds(ResponsePoint p) => p.Volts >= HalfPower * volts * reference.Gain.Magnitude;

    /// <summary>The first crossing from the low end upward.</summary>
    private Corner LowCorner(List<ResponsePoint> points)
    {
        var k = points.FindIndex(Holds);
        return k <= 0 ? Corner.None : Between(points[k - 1].Hertz, points[k].Hertz);
    }

    private Corner HighCorner(List<ResponsePoint> points)
    {
        var k = points.FindLastIndex(Holds);
        return k < 0 || k == points.Count - 1 ? Corner.None : Between(points[k + 1].Hertz, points[k].Hertz);
    }

    /// <summary>Halves, by the logarithm, between a frequency below the corner's level and one above it.</summary>
    private Corner Between(double under, double over)
    {
        var target = HalfPower * reference.Gain.Magnitude;
        for (var n = 0; n < Halvings; n++)
        {
            var middle = Math.Sqrt(under * over);
            (under, over) = Gain(middle).Magnitude < target ? (middle, over) : (under, middle);
        }

        var hertz = Math.Sqrt(under * over);
        return new Corner(hertz, Sigma(hertz));
    }

    /// <summary>The corner moves by the change of the level there over the steepness of the response.</summary>
    private double Sigma(double hertz)
    {
        const double Step = 1.02;
        var steepness = Math.Log(Gain(hertz * Step).Magnitude / Gain(hertz / Step).Magnitude) / (2 * Math.Log(Step));
        var (_, moves) = With(hertz);
        return hertz * SmallSpread.Sigma(moves.Zip(reference.Moves, (m, r) => (m - r) / steepness));
    }
}
