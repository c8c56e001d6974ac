using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Offers;

/// <summary>A transformer that could be bought instead.</summary>
/// <param name="Name">What the technician calls it.</param>
/// <param name="Transformer">Its windings, as a sheet would have them; what it does not say is assumed as for any transformer.</param>
/// <param name="VoltAmperes">Rating; NaN when it follows from its windings.</param>
/// <param name="Price">Without freight and tax; NaN when not said.</param>
/// <param name="Freight">The same; 0 when not said.</param>
/// <param name="Tax">Share on both; 0 when not said.</param>
/// <param name="Weeks">Until it is here; NaN when not said.</param>
/// <param name="Mounting">How it is fixed, in the technician's words; empty when not said.</param>
/// <param name="Body">Its size and holes.</param>
public sealed record TransformerOffer(
    string Name,
    TransformerPart Transformer,
    double VoltAmperes,
    decimal? Price,
    decimal Freight,
    decimal Tax,
    double Weeks,
    string Mounting,
    Body Body
)
{
    /// <summary>Price and freight with tax; null when no price was said.</summary>
    public decimal? Total => Price is { } price ? decimal.Round((price + Freight) * (1 + Tax), 2) : null;
}
