using Slowglow.Bench.Questions;
using Slowglow.Power.Offers;
using Slowglow.Sheets;
using Slowglow.Web.Supply;

namespace Slowglow.Web.Pages.Supply;

/// <summary>Transformers that could be bought, side by side.</summary>
public sealed partial class OffersPage
{
    private const int Most = OffersQuestion.Most;
    private readonly List<OfferFields> offers = [new(), new()];
    private IReadOnlyList<OfferAnswer>? answers;
    private IReadOnlyList<Finding> wrong = [];
    private string part = "";
    private string place = "";
    private string shown = "";

    protected override Task ArrivedAsync()
    {
        part = part.Length > 0 || Look!.Transformers.Count == 0 ? part : Look.Transformers[0];
        return Task.CompletedTask;
    }

    private async Task CompareAsync()
    {
        var (name, room) = (part, place);
        string[] lines = [.. offers.Where(o => !o.IsEmpty).Select(o => o.Line)];
        var answer = await WorkOutAsync(
            "every offer in the circuit",
            $"offers {name}|{room}|{string.Join('|', lines)}",
            (unit, cancel) => new CompareOffers(unit).Run(name, lines, room, cancel)
        );
        (answers, wrong, shown) = (answer?.Value ?? answers, answer?.Findings ?? [], name);
    }
}
