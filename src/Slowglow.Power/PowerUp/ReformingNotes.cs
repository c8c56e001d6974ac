using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;

namespace Slowglow.Power.PowerUp;

/// <summary>Waking electrolytics that have stood without volts for years.</summary>
internal static class ReformingNotes
{
    /// <summary>Leakage of a sound one: this many amperes for each farad and volt, and a little (common practice, no source).</summary>
    private const double LeakPerFaradVolt = 0.03;
    private const double LeastAmps = 0.3e-3;
    private const double HighTension = 100;

    public static IReadOnlyList<string> Of(Sheet sheet, IReadOnlyList<string> rails)
    {
        CapacitorPart[] old =
        [
            .. sheet
                .Parts.OfType<CapacitorPart>()
                .Where(c =>
                    c.Style == CapacitorStyle.Electrolytic
                    && c.RatedVolts >= HighTension
                    && c.Pins.Any(p => rails.Contains(p.Net))
                ),
        ];
        return old.Length == 0
            ? []
            :
            [
                "Electrolytics that have stood for years: valves out, lamp in, and a quarter, a half, three quarters and the whole of the mains, half an hour each; go on when the rail no longer rises.",
                .. old.Select(c =>
                {
                    var amps = Math.Max(LeakPerFaradVolt * c.Farads * c.RatedVolts, LeastAmps);
                    return $"{c.Designator} ({c.Description}): through a resistor it may still take {Engineering.Format(amps, "A", 2)} after an hour at its rated volts; if it takes more, or warms, it has to go.";
                }),
            ];
    }
}
