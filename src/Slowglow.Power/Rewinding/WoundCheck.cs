namespace Slowglow.Power.Rewinding;

/// <summary>The check of a wound part against its specification: ratios, ohms, off-load current; flash tests are for the winder to certify.</summary>
public static class WoundCheck
{
    /// <summary>Turns are counted, but a turn more or less may slip in; copper and wire vary more (common practice, no source).</summary>
    private const double RatioBand = 0.02;
    private const double OhmsBand = 0.12;

    /// <summary>Rows of the form; figures entered are set beside them.</summary>
    public static IReadOnlyList<WoundCheckRow> Of(WoundDesign design, MeasuredTransformer? entered = null)
    {
        var first = design.Windings.First(w => w.Need.IsPrimary);
        List<WoundCheckRow> rows = [];
        foreach (var winding in design.Windings.Where(w => w != first))
        {
            var ratio = (double)first.Turns / winding.Turns;
            var oneTurn = 1.0 / winding.Turns;
            var band = Math.Max(RatioBand, oneTurn / 2);
            rows.Add(
                new(
                    $"{first.Name}/{winding.Name}, nothing drawn",
                    $"{first.Name}/{winding.Name}",
                    ratio,
                    ratio * (1 - band),
                    ratio * (1 + band),
                    "",
                    Entered(entered, first.Name, winding.Name)
                )
            );
        }

        foreach (var winding in design.Windings)
        {
            var ohms = winding.ColdOhms;
            var measured = entered?.Ohms.GetValueOrDefault(winding.Name, double.NaN) ?? double.NaN;
            rows.Add(
                new(
                    $"ohms of {winding.Name} at 20 degrees",
                    winding.Name,
                    ohms,
                    ohms * (1 - OhmsBand),
                    ohms * (1 + OhmsBand),
                    "ohm",
                    measured
                )
            );
        }

        // A guide within a factor of two; a shorted turn draws many times more.
        var amps = design.OffLoadAmps;
        rows.Add(
            new(
                "primary current, nothing drawn",
                "off load",
                amps,
                amps / 2.5,
                amps * 2.5,
                "A",
                entered?.OffLoadAmps ?? double.NaN
            )
        );
        return rows;
    }

    private static double Entered(MeasuredTransformer? entered, string first, string second)
    {
        var forward = entered?.Ratios.FirstOrDefault(r => r.First == first && r.Second == second);
        var backward = entered?.Ratios.FirstOrDefault(r => r.First == second && r.Second == first);
        return forward?.Ratio ?? (1 / backward?.Ratio) ?? double.NaN;
    }
}
