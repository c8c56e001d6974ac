using Slowglow.Cli.Desk;
using Slowglow.Power.Offers;

namespace Slowglow.Cli.Json;

/// <summary>Offers compared, best first.</summary>
internal sealed record OffersJson(
    string Part,
    IReadOnlyList<OfferJson> Offers,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static OffersJson From(string part, IReadOnlyList<OfferAnswer> offers, IReadOnlyList<DocumentFinding> findings) =>
        new(part, [.. offers.Select(OfferJson.From)], Power.Cautions.Always, [.. findings.Select(FindingJson.From)]);
}
