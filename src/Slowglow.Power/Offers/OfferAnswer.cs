using Slowglow.Power.Rewinding;

namespace Slowglow.Power.Offers;

/// <summary>How an offer does in the circuit.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Lacks">What keeps it from being fitted at all; null when it can be.</param>
/// <param name="Rails">What the rails would be.</param>
/// <param name="Load">Rms current of its busiest winding over that winding's rating; NaN when no rating is known.</param>
/// <param name="LoadedWinding">Name of the busiest.</param>
/// <param name="Mounting">Whether it fits where the old one stood.</param>
public sealed record OfferAnswer(
    TransformerOffer Offer,
    string? Lacks,
    IReadOnlyList<RailCheck> Rails,
    double Load,
    string LoadedWinding,
    MountingFit Mounting
)
{
    /// <summary>A rail may be off by this much before parts feel it (common practice, no source).</summary>
    private const double MostOff = 0.1;

    public double WorstRail => Rails.Count == 0 ? double.NaN : Rails.Max(r => r.Error);

    /// <summary>True when it can be fitted, every rail comes near, no winding is overloaded and it is not too large.</summary>
    public bool Suits => Lacks is null && WorstRail <= MostOff && !(Load > 1) && Mounting.Fits != false;
}
