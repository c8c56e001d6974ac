using Slowglow.Quantities;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Jobs;

/// <summary>The reading line of a probe, with a gap for the figure: whoever proposes a line writes this one.</summary>
/// <param name="Before">Up to the figure: <c>V1.6 = </c>.</param>
/// <param name="Unit">Without a prefix: <c>V</c>.</param>
/// <param name="Kind">Behind the unit: <c> ripple</c>; empty for dc and ohms.</param>
/// <param name="On">The setup, where it has to be said: <c> on slow</c>.</param>
public readonly record struct LineToType(string Before, string Unit, string Kind, string On)
{
    private const int Digits = 6;

    /// <summary>What stands behind the figure.</summary>
    public string After => $" {Unit}{Kind}{On}";

    /// <param name="chosen">Name of the setup that a line without "on" is taken in; null to say it in any case.</param>
    public static LineToType Of(Probe probe, Setup setup, string? chosen = null)
    {
        var kind = probe.Kind switch
        {
            ProbeKind.Dc or ProbeKind.Ohm => "",
            ProbeKind.Level => " ac " + probe.KindText,
            _ => " " + probe.KindText,
        };
        return new($"{probe.Where} = ", probe.Unit, kind, setup.Name == chosen ? "" : $" on {setup.Name}");
    }

    /// <summary>The whole line, with a value in base units.</summary>
    public string With(double value) => $"{Before}{Engineering.Format(value, Unit, Digits)}{Kind}{On}";
}
