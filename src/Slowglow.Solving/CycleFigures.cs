namespace Slowglow.Solving;

/// <summary>Figures of a wave of unknowns, [step * unknowns + unknown].</summary>
internal static class CycleFigures
{
    /// <summary>Rms of every unknown, mean removed.</summary>
    public static double[] Rms(float[] wave, double[] mean)
    {
        var n = mean.Length;
        var squares = new double[n];
        for (var at = 0; at < wave.Length; at += n)
        {
            for (var r = 0; r < n; r++)
            {
                var d = wave[at + r] - mean[r];
                squares[r] += d * d;
            }
        }

        var share = (double)n / wave.Length;
        return Array.ConvertAll(squares, s => Math.Sqrt(s * share));
    }
}
