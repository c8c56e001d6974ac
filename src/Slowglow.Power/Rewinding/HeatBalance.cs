namespace Slowglow.Power.Rewinding;

/// <summary>
/// How warm a core with its coil gets: natural convection, 1.4 (rise / height)^0.25 W/m²K, and radiation of a dull surface. The windings
/// are taken as a tenth hotter than the surface (all common practice, no source).
/// </summary>
internal static class HeatBalance
{
    private const double StefanBoltzmann = 5.67e-8;
    private const double Emissivity = 0.9;
    private const double Convection = 1.4;
    private const double Inside = 1.1;
    private const double Kelvin = 273.15;

    /// <summary>Mean rise of the windings, kelvin.</summary>
    /// <param name="core">Core.</param>
    /// <param name="watts">Iron and copper loss together, &gt;= 0.</param>
    /// <param name="ambient">Air, degrees.</param>
    public static double Rise(CoreStack core, double watts, double ambient)
    {
        double low = 0,
            high = 600;
        for (var k = 0; k < 28; k++)
        {
            var middle = (low + high) / 2;
            (low, high) = Given(core, middle, ambient) < watts ? (middle, high) : (low, middle);
        }

        return low * Inside;
    }

    private static double Given(CoreStack core, double rise, double ambient)
    {
        var height = core.Lamination.OutlineHeight * 1e-3;
        var air = Kelvin + ambient;
        var convected = Convection * Math.Pow(rise / height, 0.25) * rise;
        var radiated = Emissivity * StefanBoltzmann * (Math.Pow(air + rise, 4) - Math.Pow(air, 4));
        return core.CooledSquareMetres * (convected + radiated);
    }
}
