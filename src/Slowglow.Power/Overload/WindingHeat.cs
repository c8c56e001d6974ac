using Slowglow.Power.Rewinding;

namespace Slowglow.Power.Overload;

/// <summary>
/// How fast the windings of a transformer warm, taken from a transformer designed for the same duty: its copper, its iron and the surface
/// that it gives heat off by. A fast fault heats the copper alone; a slow one the iron with it.
/// </summary>
/// <param name="design">Of the same duty.</param>
/// <param name="ambient">Air, degrees.</param>
public sealed class WindingHeat(WoundDesign design, double ambient = 40)
{
    /// <summary>Joules to warm a kilogram by a kelvin; kilograms of a cubic metre (from memory).</summary>
    private const double CopperHeat = 385;
    private const double IronHeat = 460;
    private const double CopperDensity = 8960;

    /// <summary>Enamel and film do not last here, degrees (common practice, no source).</summary>
    public const double Ruin = 200;

    /// <summary>Longer than this the iron warms too.</summary>
    private const double Slow = 60;

    /// <summary>Kilograms of copper in a winding.</summary>
    public double Copper(string winding) =>
        design.Windings.Where(w => w.Name == winding).Sum(w => w.Metres * w.CopperSquareMillimetres * 1e-6 * CopperDensity);

    /// <summary>Seconds until a winding is ruined, from cold; infinite when it never gets there.</summary>
    /// <param name="winding">The one that heats most.</param>
    /// <param name="watts">Turned to heat in it, &gt;= 0.</param>
    /// <param name="allWatts">In the whole transformer.</param>
    public double SecondsToRuin(string winding, double watts, double allWatts)
    {
        var rise = Ruin - ambient;
        if (design.Windings.All(w => w.Name != winding) || HeatBalance.Rise(design.Core, allWatts, ambient) < rise)
        {
            return double.PositiveInfinity;
        }

        var alone = Copper(winding) * CopperHeat * rise / watts;
        if (alone < Slow)
        {
            return alone;
        }

        var whole = (design.Windings.Sum(w => Copper(w.Name)) * CopperHeat) + (design.Core.Kilograms * IronHeat);
        var end = HeatBalance.Rise(design.Core, allWatts, ambient);
        return whole * end / allWatts * -Math.Log(1 - (rise / end));
    }
}
