namespace Slowglow.Power.Rewinding;

/// <summary>A test of insulation with high alternating volts, at the winder's.</summary>
/// <param name="Between">"P and everything else".</param>
/// <param name="VoltsRms">Test volts.</param>
/// <param name="Seconds">For how long.</param>
/// <param name="Source">Where the figure comes from.</param>
public sealed record FlashTest(string Between, double VoltsRms, double Seconds, string Source)
{
    /// <summary>Catalogue toroid (maker page), for mains to everything else, and between low-voltage secondaries.</summary>
    private const double MainsVolts = 4000;
    private const double LowVolts = 500;

    /// <summary>Tests for a design: mains to the rest; every secondary to the core and the others by its own working volts.</summary>
    public static IReadOnlyList<FlashTest> Of(WoundDesign design)
    {
        var primaries = string.Join(", ", design.Windings.Where(w => w.Need.IsPrimary).Select(w => w.Name));
        List<FlashTest> tests =
        [
            new($"{primaries} and everything else with the core", MainsVolts, 60, "catalogue figure of a transformer maker"),
        ];
        foreach (var winding in design.Windings.Where(w => !w.Need.IsPrimary))
        {
            // Twice the working volts and a thousand, where there is high tension: common practice.
            var own = (2 * Math.Sqrt(2) * winding.OffLoadVolts) + 1000;
            var high = winding.OffLoadVolts > 50;
            tests.Add(
                new(
                    $"{winding.Name} and the core with the other secondaries",
                    high ? Math.Round(own / 100) * 100 : LowVolts,
                    60,
                    high ? "twice the crest and 1000 V, common practice, no source" : "catalogue figure of a transformer maker"
                )
            );
        }

        return tests;
    }
}
