using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Response against the level at <c>reference</c> hertz; the corners are 3 dB below it, null where there is none.</summary>
internal sealed record ResponseJson(
    double Reference,
    double Low,
    double LowSigma,
    double High,
    double HighSigma,
    IReadOnlyList<ResponsePointJson> Points
)
{
    public static ResponseJson? From(FrequencyResponse? r) =>
        r is null
            ? null
            : new(
                r.ReferenceHertz,
                r.Low.Hertz,
                r.Low.Sigma,
                r.High.Hertz,
                r.High.Sigma,
                [.. r.Points.Select(p => new ResponsePointJson(p.Hertz, p.Volts, p.Decibels, p.PhaseDegrees, p.SigmaDecibels))]
            );
}
