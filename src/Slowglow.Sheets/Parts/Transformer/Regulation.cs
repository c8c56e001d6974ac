using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Estimates the copper of mains transformers, and raises rated volts to open-circuit volts.</summary>
internal static class Regulation
{
    /// <summary>
    /// Fraction of the volts that copper takes at full load: 23 % at 5 VA, 14 % at 20 VA, 8 % at 100 VA, 6 % at 200 VA.
    /// Common practice, no source.
    /// </summary>
    internal static double Usual(double voltAmperes) => Math.Clamp(0.40 * Math.Pow(voltAmperes, -0.35), 0.02, 0.35);

    /// <summary>Fills in missing ohms. Half of the copper loss is in the primary; windings share by their VA.</summary>
    internal static void EstimateOhms(string designator, double rating, List<WindingPlan> windings, SheetContext context)
    {
        var missing = windings.Where(w => double.IsNaN(w.Ohms)).ToList();
        if (missing.Count == 0)
        {
            return;
        }

        var total = Total(designator, rating, windings, context);
        var loss = Usual(total) / 2;
        var primaries = windings.Count(w => w.IsPrimary);
        foreach (var winding in missing)
        {
            var own = winding.IsPrimary ? total / primaries : OwnVoltAmperes(winding, total, windings);
            winding.Ohms = loss * winding.Volts * winding.Volts / own;
            context.Assume(
                designator,
                $"resistance of winding {winding.Name}",
                Engineering.Format(winding.Ohms, "ohm"),
                $"{Engineering.Format(2 * loss * 100, "%", 2)} regulation, usual for {Engineering.Format(total, "VA")}; common practice, no source"
            );
        }
    }

    private static double Total(string designator, double rating, List<WindingPlan> windings, SheetContext context)
    {
        if (rating > 0)
        {
            return rating;
        }

        var said = windings.Where(w => !w.IsPrimary && w.Amps > 0).Sum(w => w.Volts * w.Amps);
        if (said > 0)
        {
            return said;
        }

        var primary = windings.Where(w => w.IsPrimary && w.Amps > 0).Sum(w => w.Volts * w.Amps);
        if (primary > 0)
        {
            return primary;
        }

        const double small = 20;
        context.Assume(designator, "rating", Engineering.Format(small, "VA"), "neither VA nor amperes given");
        return small;
    }

    // What the windings with amperes leave over is shared evenly by those without.
    private static double OwnVoltAmperes(WindingPlan winding, double total, List<WindingPlan> windings)
    {
        if (winding.Amps > 0)
        {
            return winding.Volts * winding.Amps;
        }

        var secondaries = windings.Where(w => !w.IsPrimary).ToList();
        var silent = secondaries.Count(w => !(w.Amps > 0));
        var rest = total - secondaries.Where(w => w.Amps > 0).Sum(w => w.Volts * w.Amps);
        return Math.Max(rest, 0.1 * total) / silent;
    }

    /// <summary>Factor from rated volts to open-circuit volts, all secondaries taken as loaded with their rated amperes at once.</summary>
    internal static double Raise(string designator, WindingPlan winding, List<WindingPlan> windings, SheetContext context)
    {
        if (winding.IsPrimary || !(winding.Amps > 0))
        {
            return 1;
        }

        var primary = windings[0];
        var load = windings.Where(w => !w.IsPrimary && w.Amps > 0).Sum(w => w.Volts * w.Amps);
        var side = windings.Where(w => w.IsPrimary).Sum(w => w.Ohms / (w.Volts * w.Volts));
        var count = windings.Count(w => w.IsPrimary);

        // Primaries share the load; each drops load / count / volts * ohms of its volts.
        var drop = Math.Min(load * side / count / count, 0.5);
        var factor = (1 + (winding.Amps * winding.Ohms / winding.Volts)) / (1 - drop);
        context.Assume(
            designator,
            $"open-circuit volts of winding {winding.Name}",
            Engineering.Format(winding.Volts * factor, "V"),
            $"{Engineering.Format(winding.Volts, "V")} at {Engineering.Format(winding.Amps, "A")} plus the drop in its own copper and the primary's, all windings loaded; primary {primary.Name}"
        );
        return factor;
    }
}
