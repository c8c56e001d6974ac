namespace Slowglow.Circuits.Solved;

/// <summary>
/// Finds the resistance at which a limiter lamp and what stands behind it agree: secant steps on the logarithm of the ohms, kept within what
/// is known to be too little and too much. A lamp that is too cold for its current wants more ohms, and less than it gets: there is one root.
/// </summary>
internal sealed class LampSearch
{
    /// <summary>Relative error of the resistance that is left.</summary>
    private const double Near = 2e-3;

    /// <summary>Ohms go with about the 0.4 power of the volts; what is behind holds between its current and its volts.</summary>
    private const double UsualSlope = -0.7;
    private const double LeastSlope = -1.3;
    private const double MostSlope = -0.4;

    /// <summary>Mains are never so high that the filament is hotter than with this over its rated volts.</summary>
    private const double MostVolts = 1.4;

    /// <summary>Rounds that told nothing before the search is given up.</summary>
    private const int MostMissed = 4;

    private readonly TungstenLamp lamp;
    private double low;
    private double high;
    private (double X, double Off)? before;
    private int missed;

    /// <param name="lamp">The lamp, or several side by side.</param>
    /// <param name="start">Ohms to begin with; NaN = those with 0.3 of its volts.</param>
    public LampSearch(TungstenLamp lamp, double start)
    {
        this.lamp = lamp;
        (low, high) = (Math.Log(lamp.ColdOhms) - Near, Math.Log(lamp.Ohms(MostVolts * lamp.RatedVolts)));
        Ohms = double.IsNaN(start) ? lamp.Ohms(0.3 * lamp.RatedVolts) : start;
    }

    /// <summary>To solve with next, or the answer once it is found.</summary>
    public double Ohms { get; private set; }

    public bool IsFound { get; private set; }

    public bool IsGivenUp => missed >= MostMissed;

    /// <summary>The world did not settle at those ohms.</summary>
    public void Miss() => missed++;

    /// <summary>Learns what goes through it at those ohms, amperes rms.</summary>
    public void Learn(double amps)
    {
        var (x, off) = (Math.Log(Ohms), Math.Log(lamp.Ohms(amps * Ohms) / Ohms));
        if (Math.Abs(off) < Near)
        {
            IsFound = true;
            return;
        }

        (low, high) = off > 0 ? (x, high) : (low, x);
        var slope = before is { } b && Math.Abs(x - b.X) > 1e-9 ? (off - b.Off) / (x - b.X) : UsualSlope;
        var next = x - (off / Math.Clamp(slope, LeastSlope, MostSlope));
        before = (x, off);
        Ohms = Math.Exp(next > low && next < high ? next : (low + high) / 2);
    }
}
