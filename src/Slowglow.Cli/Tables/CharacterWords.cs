using System.Globalization;
using Slowglow.Circuits;

namespace Slowglow.Cli.Tables;

/// <summary>Answers about a channel in a few words each; "-" where there is none.</summary>
internal static class CharacterWords
{
    private const string None = "-";

    /// <summary>"82 Hz to 9.4 kHz", "below 5 Hz to 16 kHz".</summary>
    public static string Band(FrequencyResponse? response)
    {
        if (response is null)
        {
            return None;
        }

        var low = Corner(response.Low, $"below {Figures.Say(response.Points[0].Hertz, "Hz")}");
        return $"{low} to {Corner(response.High, $"above {Figures.Say(response.Points[^1].Hertz, "Hz")}")}";
    }

    private static string Corner(Corner corner, string none) =>
        double.IsNaN(corner.Hertz) ? none : Figures.Say(corner.Hertz, "Hz", 2);

    /// <summary>Magnitude at 1 kHz.</summary>
    public static string Ohms(IReadOnlyList<ImpedancePoint> points) =>
        points.Count == 0 ? None : Figures.Say(points.MinBy(p => Math.Abs(p.Hertz - 1000)).Ohms, "ohm", 3);

    public static string Clips(IReadOnlyList<ClippingCause> causes) => causes.Count == 0 ? None : causes[0].Words;

    /// <summary>"41 kHz, then U1 section 1 slews".</summary>
    public static string FullOutput(SlewLimit? slews) =>
        slews is null ? None : $"{Figures.Say(slews.Hertz, "Hz", 2)}, then {slews.Element} slews";

    /// <summary>"HT1", "heater of V1".</summary>
    public static string Way(HumCause cause) =>
        cause.Net.Length > 0 ? cause.Net
        : cause.Heater.Length > 0 ? $"heater of {cause.Heater}"
        : "windings, wiring";

    /// <summary>"-3.0 dB".</summary>
    public static string Decibels(double? value) =>
        value is { } dB && double.IsFinite(dB)
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(dB, 1) + 0.0:0.0} dB")
            : None;

    /// <summary>Two standard deviations either way.</summary>
    public static string Spread(double sigma) =>
        double.IsFinite(sigma) ? string.Create(CultureInfo.InvariantCulture, $"+-{2 * sigma:0.0} dB") : None;

    /// <summary>"V3 section 1: 14 dB, phase margin 71 degrees".</summary>
    public static string Loop(StabilityMargin? loop)
    {
        if (loop is null)
        {
            return "none above unity gain";
        }

        if (loop.Latches)
        {
            return $"about {loop.Element}: positive, it stands at one end";
        }

        var gain = string.Create(CultureInfo.InvariantCulture, $"{loop.LoopGainDecibels:0} dB");
        var margin = double.IsFinite(loop.PhaseMarginDegrees)
            ? string.Create(CultureInfo.InvariantCulture, $", phase margin {loop.PhaseMarginDegrees:0} degrees")
            : "";
        return $"about {loop.Element}: {gain}{margin}{(loop.IsBestCase ? " at best" : "")}"
            + (loop.PhaseMarginDegrees < 0 ? ", it oscillates" : "");
    }

    public static string Kind(NoiseKind kind) =>
        kind switch
        {
            NoiseKind.Thermal => "thermal",
            NoiseKind.Shot => "shot",
            _ => "op-amp input",
        };
}
