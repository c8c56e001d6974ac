using Slowglow.Circuits;
using Slowglow.Quantities;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>By how much a world puts a part over its rating, when it does so and the healthy unit does not.</summary>
/// <param name="Ratio">Over the rating.</param>
/// <param name="Words">"9.4 W, 1.9 times its rating".</param>
internal sealed record Overstress(double Ratio, string Words)
{
    /// <summary>Ratings are passed by a little everywhere; these are past doubt.</summary>
    private const double Watts = 1.25;
    private const double Volts = 1.15;
    private const double Amps = 1.5;
    private const double AboveHealthy = 1.3;

    public static Overstress? Of(PartStress stress, PartStress? healthy)
    {
        Overstress?[] all =
        [
            One(stress.WattsRatio, healthy?.WattsRatio, Watts, stress.Watts, "W"),
            One(stress.VoltsRatio, healthy?.VoltsRatio, Volts, stress.Volts, "V"),
            One(stress.AmpsRatio, healthy?.AmpsRatio, Amps, stress.AmpsRms, "A"),
        ];
        return all.OfType<Overstress>().MaxBy(o => o.Ratio);
    }

    private static Overstress? One(double ratio, double? healthy, double bound, double value, string unit)
    {
        var isOver = ratio > bound && ratio > AboveHealthy * (healthy is null || double.IsNaN(healthy.Value) ? 0 : healthy.Value);
        return isOver
            ? new(ratio, $"{Engineering.Format(value, unit)}, {Engineering.Format(ratio, "times", 2)} its rating")
            : null;
    }
}
