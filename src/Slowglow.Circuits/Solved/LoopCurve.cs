using System.Numerics;

namespace Slowglow.Circuits.Solved;

/// <summary>A loop gain over frequency, read for its margins.</summary>
internal sealed class LoopCurve
{
    private readonly double[] hertz;
    private readonly Complex[] ratio;
    private readonly double[] phase;

    public LoopCurve(double[] hertz, Complex[] ratio)
    {
        (this.hertz, this.ratio) = (hertz, ratio);
        Peak = Array.IndexOf(ratio, ratio.MaxBy(t => t.Magnitude));
        phase = Unwrapped();
    }

    /// <summary>Index of the largest loop gain.</summary>
    public int Peak { get; }
    public double LargestGain => ratio[Peak].Magnitude;

    /// <summary>Positive feedback above one at the lowest frequency.</summary>
    public bool Latches => ratio[0].Real < -1 && Math.Abs(ratio[0].Imaginary) < Math.Abs(ratio[0].Real);

    public (double Difference, double Hertz) Smallest()
    {
        var k = Enumerable.Range(0, ratio.Length).MinBy(i => (1 + ratio[i]).Magnitude);
        return ((1 + ratio[k]).Magnitude, hertz[k]);
    }

    /// <summary>Degrees, followed up and down from the peak without jumps.</summary>
    private double[] Unwrapped()
    {
        double[] degrees = [.. ratio.Select(t => t.Phase * 180 / Math.PI)];
        for (var k = Peak + 1; k < degrees.Length; k++)
        {
            degrees[k] -= 360 * Math.Round((degrees[k] - degrees[k - 1]) / 360);
        }

        for (var k = Peak - 1; k >= 0; k--)
        {
            degrees[k] -= 360 * Math.Round((degrees[k] - degrees[k + 1]) / 360);
        }

        return degrees;
    }

    /// <summary>The smaller of the phase margins at the upper and the lower end of the loop's range.</summary>
    public (double Degrees, double Hertz) PhaseMargin()
    {
        var margins = new[] { 1, -1 }
            .Select(way => (Way: way, At: Crossing(way, k => Math.Log(ratio[k].Magnitude))))
            .Where(c => c.At is not null)
            .Select(c => (180 + (c.Way * At(c.At!.Value, k => phase[k])), At(c.At.Value, k => hertz[k])))
            .DefaultIfEmpty((double.NaN, double.NaN));
        return margins.MinBy(m => m.Item1);
    }

    /// <summary>Decibels, NaN when the phase never turns over.</summary>
    public double GainMargin() =>
        new[] { 1, -1 }
            .Select(way => Crossing(way, k => 180 + (way * phase[k])))
            .Where(c => c is not null)
            .Select(c => -20 * At(c!.Value, k => Math.Log10(ratio[k].Magnitude)))
            .DefaultIfEmpty(double.NaN)
            .MinBy(Math.Abs);

    /// <summary>Where a figure first falls through zero from the peak on: the index before, and the share of the step.</summary>
    private (int From, int To, double Share)? Crossing(int way, Func<int, double> figure)
    {
        for (var k = Peak; k + way >= 0 && k + way < ratio.Length; k += way)
        {
            var (now, next) = (figure(k), figure(k + way));
            if (now > 0 && next <= 0)
            {
                return (k, k + way, now / (now - next));
            }
        }

        return null;
    }

    private static double At((int From, int To, double Share) c, Func<int, double> figure) =>
        figure(c.From) + (c.Share * (figure(c.To) - figure(c.From)));
}
