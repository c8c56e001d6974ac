using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;

namespace Slowglow.Web.Bench.Words;

/// <summary>The reading line that a proposed reading needs, with a gap for the figure.</summary>
/// <param name="Before">Up to the figure: <c>V1.6 = </c>.</param>
/// <param name="After">Unit, kind and setup: <c> V ripple on slow</c>.</param>
public readonly record struct LineFor(string Before, string After)
{
    public static LineFor Of(NextReading next, string chosenSetup)
    {
        var probe = next.Probe;
        var kind = probe.Kind switch
        {
            ProbeKind.Dc => "",
            ProbeKind.Ohm => "",
            ProbeKind.Level => " ac " + probe.KindText,
            _ => " " + probe.KindText,
        };
        var on = next.Setup.Name == chosenSetup ? "" : " on " + next.Setup.Name;
        return new($"{probe.Where} = ", $" {probe.Unit}{kind}{on}");
    }
}
