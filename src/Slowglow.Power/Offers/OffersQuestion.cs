using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Offers;

/// <summary>Compares transformers to be had by what the rails would be with each of them in the circuit.</summary>
/// <param name="sheet">The unit.</param>
/// <param name="rails">Nets of its supply rails.</param>
public sealed class OffersQuestion(Sheet sheet, IReadOnlyList<string> rails)
{
    /// <summary>More are not compared at once.</summary>
    public const int Most = 6;

    /// <summary>What suits first, then by the worst rail. Null when the circuit does not settle as drawn.</summary>
    public IReadOnlyList<OfferAnswer>? Ask(
        TransformerPart part,
        IReadOnlyList<TransformerOffer> offers,
        Body room,
        CancellationToken cancel = default
    )
    {
        var now = TransformerInCircuit.With(sheet, part);
        return now is not null && RailGoals.Of(sheet, now, rails, cancel) is { } goals
            ?
            [
                .. offers
                    .Select(o => One(part, o, goals, MountingFit.Of(room, o.Body), cancel))
                    .OrderByDescending(a => a.Suits)
                    .ThenBy(a => a.Lacks is not null)
                    .ThenBy(a => a.WorstRail),
            ]
            : null;
    }

    private OfferAnswer One(
        TransformerPart part,
        TransformerOffer offer,
        RailGoals goals,
        MountingFit fit,
        CancellationToken cancel
    )
    {
        var (fitted, lacks) = OfferMatch.Of(part, offer.Transformer, sheet.Mains.Volts);
        if (fitted is null || TransformerInCircuit.With(sheet, fitted) is not { } changed)
        {
            return new(offer, lacks ?? "the circuit cannot be solved with it", [], double.NaN, "", fit);
        }

        var checks = goals.Check(changed, cancel);
        var busiest = changed.Duties(cancel).Where(d => d.RatedAmps > 0 && !d.IsPrimary).MaxBy(d => d.AmpsRms / d.RatedAmps);
        return checks.Any(c => double.IsNaN(c.Given))
            ? new(offer, "the circuit does not settle with it", [], double.NaN, "", fit)
            : new(
                offer,
                null,
                checks,
                busiest is null ? double.NaN : busiest.AmpsRms / busiest.RatedAmps,
                busiest?.Name ?? "",
                fit
            );
    }
}
