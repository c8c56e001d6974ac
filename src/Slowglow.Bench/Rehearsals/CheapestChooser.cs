using Slowglow.Diagnosis;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>The fewest minutes from where the bench stands; the order of the sheet where that is the same.</summary>
internal sealed class CheapestChooser(ReadingOffer offer) : IReadingChooser
{
    private readonly Choice[] all =
    [
        .. new[] { Setup.Default, Setup.Cold }.SelectMany(s => offer.In(s).Select(p => new Choice(p, s))),
    ];

    public Choice? Next(HiddenUnit unit, DiagnosisResult result, IReadOnlySet<Choice> tried) =>
        all.Where(c => !tried.Contains(c)).MinBy(c => offer.Minutes(c.Probe, c.Setup, unit.Readings.LastOrDefault()));
}
