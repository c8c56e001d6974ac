namespace Slowglow.Power.Overload;

/// <summary>
/// How long a quick-acting miniature fuse carries a multiple of its rating, at the most: 2.1 times half an hour, 2.75 times 2 s, 4 times
/// 0.3 s, 10 times 0.02 s (IEC 60127, from memory); between these the logarithms go straight, beyond them I²t stays.
/// </summary>
public static class FuseTime
{
    private static readonly double[] Times = [2.1, 2.75, 4, 10];
    private static readonly double[] Seconds = [1800, 2, 0.3, 0.02];

    /// <summary>Longest seconds until it has cleared; infinite below 2.1 times its rating.</summary>
    public static double Longest(double multiple)
    {
        if (!(multiple >= Times[0]))
        {
            return double.PositiveInfinity;
        }

        if (multiple >= Times[^1])
        {
            return Seconds[^1] * Math.Pow(Times[^1] / multiple, 2);
        }

        var k = Array.FindIndex(Times, t => t > multiple);
        var share = Math.Log(multiple / Times[k - 1]) / Math.Log(Times[k] / Times[k - 1]);
        return Seconds[k - 1] * Math.Pow(Seconds[k] / Seconds[k - 1], share);
    }
}
