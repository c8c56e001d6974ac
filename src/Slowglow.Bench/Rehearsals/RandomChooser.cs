using Slowglow.Diagnosis;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>Anything on offer, with the unit on or off.</summary>
internal sealed class RandomChooser : IReadingChooser
{
    private readonly Choice[] order;

    public RandomChooser(ReadingOffer offer, Random random)
    {
        order = [.. new[] { Setup.Default, Setup.Cold }.SelectMany(s => offer.In(s).Select(p => new Choice(p, s)))];
        random.Shuffle(order);
    }

    public Choice? Next(HiddenUnit unit, DiagnosisResult result, IReadOnlySet<Choice> tried) =>
        Array.Find(order, c => !tried.Contains(c));
}
