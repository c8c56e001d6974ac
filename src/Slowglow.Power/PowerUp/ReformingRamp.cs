using Slowglow.Circuits;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.PowerUp;

/// <summary>
/// Waking electrolytics that have stood without volts for years: what each should come to at every part of the mains with the valves out,
/// and the leak that may be left there, as the volts across a resistor in its lead. The volts are the world's; the leak allowed grows with the
/// volts (common practice, no source).
/// </summary>
internal static class ReformingRamp
{
    /// <summary>Leakage of a sound one after half an hour: this many amperes for each farad and volt, and a little.</summary>
    private const double LeakPerFaradVolt = 0.03;
    private const double LeastAmps = 0.3e-3;

    /// <summary>This many times the leak allowed is not worth waiting for.</summary>
    private const double Hopeless = 5;
    private const double HighTension = 100;

    /// <summary>Volts that the leak allowed at the last step drops across the resistor.</summary>
    private const double Readable = 10;

    private static readonly double[] Shares = [0.25, 0.5, 0.75, 1];

    public static IReadOnlyList<string> Of(Worlds worlds, IReadOnlyList<string> rails, CancellationToken cancel)
    {
        var sheet = worlds.Circuit.Sheet;
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
        if (old.Length == 0)
        {
            return [];
        }

        Probe[] probes = [.. old.Select(Across)];
        double[] mains = [.. Shares.Select(s => s * sheet.Mains.Volts)];
        Answer[][] volts = [.. mains.Select(m => At(worlds, m, probes, cancel))];
        return
        [
            $"Electrolytics that have stood for years: valves out, the resistor named in the plus lead of each, and the mains in four steps of half an hour: {List(mains, "V")}. Go on only while the volts across the resistor are below those named and falling; {Hopeless:0} times as much, or a can that warms, and the capacitor has to go.",
            .. old.Select((c, k) => Line(c, [.. volts.Select(v => Math.Abs(v[k].Value))])),
        ];
    }

    private static Probe Across(CapacitorPart c)
    {
        var (plus, minus) = (c.Pins[0].Net, c.Pins[1].Net);
        return new($"{c.Designator}", plus, minus, ProbeKind.Dc);
    }

    private static Answer[] At(Worlds worlds, double mains, Probe[] probes, CancellationToken cancel) =>
        worlds.Ask(
            Setup.Default with
            {
                Name = "reforming",
                MainsVolts = mains,
                ValvesOut = true,
            },
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            cancel: cancel
        )[0];

    private static string Line(CapacitorPart c, double[] volts)
    {
        double[] amps = [.. volts.Select(v => Math.Max(LeakPerFaradVolt * c.Farads * v, LeastAmps))];
        var ohms = StandardSizes.E12AtMost(Readable / amps[^1]);
        return $"{c.Designator} ({c.Description}): {Engineering.Drawing(ohms)} 2 W; it should come to {List(volts, "V")}, with at most {List([.. amps.Select(a => a * ohms)], "V")} across the resistor after the half hour ({Engineering.Format(amps[^1], "A", 2)} at the last).";
    }

    private static string List(double[] values, string unit)
    {
        string[] said = [.. values.Select(v => double.IsFinite(v) ? Engineering.Format(v, unit, 3) : "no figure")];
        return $"{string.Join(", ", said[..^1])} and {said[^1]}";
    }
}
