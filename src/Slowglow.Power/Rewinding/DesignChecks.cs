namespace Slowglow.Power.Rewinding;

/// <summary>How a design stands to its limits.</summary>
internal static class DesignChecks
{
    public static IReadOnlyList<LimitCheck> Of(
        IReadOnlyList<WoundWinding> windings,
        double fill,
        double highTesla,
        double hottest,
        DesignLimits limits
    )
    {
        List<LimitCheck> checks =
        [
            new("window fill", 100 * fill, 100, "%"),
            new("flux density at the highest mains", highTesla, limits.Steel.MostTesla, "T"),
            new($"temperature of the windings (class {limits.Class.Letter})", hottest, limits.Class.WindingCelsius, "degrees"),
            new("current density", windings.Max(w => w.Density), limits.MostDensity * WireStep, "A/mm²"),
        ];
        foreach (var winding in windings.Where(w => !w.Need.IsPrimary))
        {
            checks.Add(
                new(
                    $"drop of {winding.Name} from no load to full load",
                    100 * winding.Regulation,
                    100 * limits.MostRegulation,
                    "%"
                )
            );
            var error = Math.Abs((winding.LoadedVolts / winding.Need.Volts) - 1);
            checks.Add(new($"error of {winding.Name}'s volts in whole turns", 100 * error, 100 * limits.MostVoltsError, "%"));
        }

        return checks;
    }

    /// <summary>The nearest size of the series may carry an eighth more than asked for.</summary>
    private const double WireStep = 1.13;
}
