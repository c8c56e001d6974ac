using System.Globalization;

namespace Slowglow.Power.Offers;

/// <summary>Whether a transformer fits where the old one stood.</summary>
/// <param name="Fits">Null when a size is not known.</param>
/// <param name="Words">"fits, and bolts to the old holes", "12 mm too high".</param>
public sealed record MountingFit(bool? Fits, string Words)
{
    /// <summary>A bolt has so much play in its hole, millimetres (common practice, no source).</summary>
    private const double Play = 2;

    /// <summary>By size either way round, then by the distance of the holes.</summary>
    public static MountingFit Of(Body room, Body offer)
    {
        if (!room.HasSize || !offer.HasSize)
        {
            return new(null, room.HasHoles && offer.HasHoles ? Holes(room, offer) : "size not known");
        }

        var straight = Math.Max(offer.Width - room.Width, offer.Depth - room.Depth);
        var turned = Math.Max(offer.Width - room.Depth, offer.Depth - room.Width);
        var (wide, high) = (Math.Min(straight, turned), offer.Height - room.Height);
        if (wide > 0 || high > 0)
        {
            return new(false, wide >= high ? Say($"{wide:0.#} mm too wide") : Say($"{high:0.#} mm too high"));
        }

        return new(true, $"fits, {(room.HasHoles && offer.HasHoles ? Holes(room, offer) : "holes not known")}");
    }

    private static string Holes(Body room, Body offer)
    {
        bool Same(double a, double b) => Math.Abs(room.HolesAlong - a) <= Play && Math.Abs(room.HolesAcross - b) <= Play;
        return Same(offer.HolesAlong, offer.HolesAcross) || Same(offer.HolesAcross, offer.HolesAlong)
            ? "bolts to the old holes"
            : Say($"new holes to drill, {offer.HolesAlong:0.#} by {offer.HolesAcross:0.#} mm");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
