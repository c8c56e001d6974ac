namespace Slowglow.Power.Offers;

/// <summary>How much room a transformer takes or is given, and where its holes are. Millimetres; NaN = not said.</summary>
/// <param name="Width">Of the footprint.</param>
/// <param name="Depth">Of the footprint, coil included.</param>
/// <param name="Height">Over the chassis.</param>
/// <param name="HolesAlong">Distance of the fixing holes.</param>
/// <param name="HolesAcross">The other way.</param>
public sealed record Body(double Width, double Depth, double Height, double HolesAlong, double HolesAcross)
{
    public static Body Unknown { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    public bool HasSize => Width > 0;

    public bool HasHoles => HolesAlong > 0;
}
