using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// What is still there where nothing should be. A point whose supply is gone does not read zero: its capacitors keep a tenth of a volt that no junction
/// passes on, an open winding picks up its neighbour, a leak of microamperes stands on a gigaohm. None of it is on a drawing. Common practice, no source.
/// </summary>
internal static class Residue
{
    /// <summary>A figure below this share of the healthy one counts as nothing.</summary>
    private const double Nothing = 0.05;

    /// <summary>What is left, as a share of the healthy figure, and the most it comes to.</summary>
    private const double DcShare = 0.15;
    private const double MostDcVolts = 0.1;
    private const double AcShare = 0.02;
    private const double MostAcVolts = 0.5;

    /// <summary>Test signal past a stage that passes none: what wiring, supply and the capacitances of a dead device couple across (54 dB down).</summary>
    private const double LevelShare = 0.002;
    private const double MostLevelVolts = 0.02;

    /// <summary>Variance on the probe's scale, beside meter and model, at a predicted value in base units.</summary>
    public static double Variance(Probe probe, double value, double healthy)
    {
        var size = Math.Abs(value);
        if (size >= Nothing * Math.Abs(healthy) || probe.IsInlet)
        {
            return 0;
        }
        var width = probe.Kind switch
        {
            ProbeKind.Dc => Math.Min(DcShare * Math.Abs(healthy), MostDcVolts),
            ProbeKind.Ac when !probe.SaidAsRipple => Widened(probe, size, Math.Min(AcShare * Math.Abs(healthy), MostAcVolts)),
            ProbeKind.Level => Widened(probe, size, Math.Min(LevelShare * Math.Abs(healthy), MostLevelVolts)),
            _ => 0,
        };
        return width * width;
    }

    private static double Widened(Probe probe, double size, double left) =>
        Scale.Of(probe).To(size + left) - Scale.Of(probe).To(size);
}
