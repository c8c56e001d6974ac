using Slowglow.Power.Offers;
using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Compares transformers that could be bought in the place of one of the unit.</summary>
public sealed class CompareOffers(BenchUnit unit)
{
    /// <summary>The offers, best first, or what is wrong with them.</summary>
    public Parsed<IReadOnlyList<OfferAnswer>> Run(
        string designator,
        IReadOnlyList<string> lines,
        string place = "",
        CancellationToken cancel = default
    )
    {
        var found = RewindQuestion.Find(unit.Sheet, designator);
        if (found.Value is not { } part)
        {
            return new(null, found.Findings);
        }

        if (lines.Count is 0 or > OffersQuestion.Most)
        {
            return Wrong($"{lines.Count} offers cannot be compared", $"give one to {OffersQuestion.Most}");
        }

        var read = lines.Select(l => OfferReader.Read(l, unit.Sheet.Mains.Frequency)).ToArray();
        if (read.Any(r => r.Value is null))
        {
            return new(null, [.. read.SelectMany(r => r.Findings)]);
        }

        var room = BodyReader.Place(place);
        if (room.Value is null)
        {
            return new(null, room.Findings);
        }

        var rails = Rails.Of(unit.Sheet, Setup.Default);
        return new OffersQuestion(unit.Sheet, rails).Ask(part, [.. read.Select(r => r.Value!)], room.Value, cancel) is { } answers
            ? new(answers, [])
            : Wrong("the circuit does not settle as drawn, so that nothing can be compared", "look at slowglow expect");
    }

    private static Parsed<IReadOnlyList<OfferAnswer>> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
