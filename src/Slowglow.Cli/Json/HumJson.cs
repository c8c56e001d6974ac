using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Hum at the output at the mains frequency and at twice, volts rms, and the ways it comes by.</summary>
internal sealed record HumJson(double Main, double Twice, IReadOnlyList<HumCauseJson> Causes)
{
    public static HumJson? From(HumSplit? h) =>
        h is null
            ? null
            : new(
                h.MainVolts,
                h.TwiceVolts,
                [
                    .. h.Causes.Select(c => new HumCauseJson(
                        c.Net.Length > 0 ? c.Net : null,
                        c.Heater.Length > 0 ? c.Heater : null,
                        c.RippleVolts,
                        c.OutputVolts,
                        c.MainVolts,
                        c.TwiceVolts
                    )),
                ]
            );
}
