using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Power.Overload;

/// <summary>
/// How long a miniature fuse carries a multiple of its rating, at the most. Quick-acting (F): 2.1 times half an hour, 2.75 times 2 s, 4 times
/// 0.3 s, 10 times 0.02 s; time-lag (T): 2 minutes, 10 s, 3 s, 0.3 s (IEC 60127-2, sheets 2 and 3, from memory). Between these the logarithms
/// go straight, beyond them I²t stays. Where the drawing says no type it is taken as time-lag: nothing is then protected that might not be.
/// </summary>
public static class FuseTime
{
    private static readonly double[] Times = [2.1, 2.75, 4, 10];
    private static readonly double[] Quick = [1800, 2, 0.3, 0.02];
    private static readonly double[] TimeLag = [120, 10, 3, 0.3];

    /// <summary>
    /// The least A²s at which a fuse may melt: ten times its rating for 20 ms (time-lag), four times for 10 ms (quick-acting), the shortest that
    /// IEC 60127-2 allows (from memory). Where the drawing says no type it is taken as quick-acting: nothing is then promised that might not hold.
    /// </summary>
    /// <param name="ratedAmps">Amperes, &gt; 0.</param>
    /// <param name="speed">Its type.</param>
    public static double LeastMelting(double ratedAmps, FuseSpeed speed)
    {
        var (multiple, seconds) = speed == FuseSpeed.TimeLag ? (10, 0.02) : (4, 0.01);
        return multiple * ratedAmps * multiple * ratedAmps * seconds;
    }

    /// <summary>Longest seconds until it has cleared; infinite below 2.1 times its rating.</summary>
    /// <param name="multiple">Rms current over its rating.</param>
    /// <param name="speed">Its type.</param>
    public static double Longest(double multiple, FuseSpeed speed)
    {
        if (!(multiple >= Times[0]))
        {
            return double.PositiveInfinity;
        }

        var seconds = speed == FuseSpeed.Quick ? Quick : TimeLag;
        if (multiple >= Times[^1])
        {
            return seconds[^1] * Math.Pow(Times[^1] / multiple, 2);
        }

        var k = Array.FindIndex(Times, t => t > multiple);
        var share = Math.Log(multiple / Times[k - 1]) / Math.Log(Times[k] / Times[k - 1]);
        return seconds[k - 1] * Math.Pow(seconds[k] / seconds[k - 1], share);
    }
}
