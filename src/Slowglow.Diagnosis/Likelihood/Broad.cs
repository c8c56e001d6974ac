using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// The prediction of one that does not know: half a chance that the fault leaves this reading as in a healthy unit, else anything between
/// the rails, zero being favoured.
/// </summary>
/// <param name="probe">The reading's probe.</param>
/// <param name="healthy">What the healthy unit would show.</param>
/// <param name="reach">Largest DC volts that the unit holds.</param>
/// <param name="likeHealthy">Share of the healthy prediction, 0 to 1.</param>
internal sealed class Broad(Probe probe, Prediction healthy, double reach, double likeHealthy = 0.5)
{
    /// <summary>Chance that an ohm or diode reading shows overload, knowing nothing.</summary>
    private const double OverloadChance = 0.15;

    private readonly double low = Scale.Of(probe).IsLinear ? -1.1 * reach : Scale.Of(probe).To(0);
    private readonly double high = Scale.Of(probe).IsLinear ? 1.1 * reach : Scale.Of(probe).To(Top(probe, reach));
    private readonly double healthyShare = healthy.HasFigure ? likeHealthy : 0;

    /// <summary>Log density at a reading on the probe's scale.</summary>
    public double LogDensity(double y)
    {
        var near =
            healthyShare > 0 ? healthyShare * Math.Exp(StudentT.LogDensity((y - healthy.Mean) / healthy.Sd, healthy.Sd)) : 0;
        var rest = 1 - healthyShare;
        var flat = y >= low && y <= high ? 0.6 / (high - low) : 0.002 / (high - low);
        var zero = Scale.Of(probe).To(0);
        var width = 0.06 * (high - low);
        var atZero = 0.4 * Math.Exp(StudentT.LogDensity((y - zero) / width, width));
        return Math.Log(near + rest * (flat + atZero));
    }

    /// <summary>Log probability that the meter shows overload.</summary>
    public double LogOverload() =>
        Math.Log(
            healthy.Kind is AnswerKind.Overload or AnswerKind.Floating
                ? likeHealthy + (1 - likeHealthy) * OverloadChance
                : (1 - healthyShare) * OverloadChance
        );

    /// <summary>Probability of a reading below y, on the probe's scale.</summary>
    public double Below(double y)
    {
        var near = healthyShare > 0 ? healthyShare * StudentT.Cumulative((y - healthy.Mean) / healthy.Sd) : 0;
        var zero = Scale.Of(probe).To(0);
        var width = 0.06 * (high - low);
        var flat = Math.Clamp((y - low) / (high - low), 0, 1);
        return near + (1 - healthyShare) * (0.6 * flat + 0.4 * StudentT.Cumulative((y - zero) / width));
    }

    private static double Top(Probe probe, double reach) =>
        probe.IsInlet ? 20
        : probe.Kind == ProbeKind.Ohm ? 40e6
        : reach;
}
