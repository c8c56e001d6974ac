using Slowglow.Power.Offers;

namespace Slowglow.Cli.Json;

/// <summary>An offer; <c>load</c> is the busiest winding's current over its rating, null when no rating is known.</summary>
internal sealed record OfferJson(
    string Name,
    bool Suits,
    string? Lacks,
    IReadOnlyList<RewindRailJson> Rails,
    double WorstRail,
    double Load,
    string LoadedWinding,
    decimal? Total,
    double Weeks,
    string Fixing,
    bool? Fits,
    string Mounting
)
{
    public static OfferJson From(OfferAnswer a) =>
        new(
            a.Offer.Name,
            a.Suits,
            a.Lacks,
            [.. a.Rails.Select(r => new RewindRailJson(r.Winding, r.Where, r.IsAc ? "ac" : "dc", r.Asked, r.Given))],
            a.WorstRail,
            a.Load,
            a.LoadedWinding,
            a.Offer.Total,
            a.Offer.Weeks,
            a.Offer.Mounting,
            a.Mounting.Fits,
            a.Mounting.Words
        );
}
