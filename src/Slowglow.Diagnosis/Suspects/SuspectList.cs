using Slowglow.Diagnosis.Hypotheses;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Turns cures into suspects with their sentences.</summary>
internal sealed class SuspectList(Knowledge knowledge, Posterior posterior, Explainer explainer, ChainWords chain, PastJobs? past)
{
    /// <summary>Less likely than this is not worth a line.</summary>
    private const double WorthALine = 1e-5;

    /// <summary>Sentences are written for this many.</summary>
    private const int Explained = 8;
    private const double WorthAWord = 2e-4;
    private const int MostModes = 8;

    /// <summary>The whole chain from part to sound is told for these.</summary>
    private const int Told = 3;
    private const double WorthTelling = 0.03;

    /// <summary>Suspects, with the probabilities of healthy and none-of-these rescaled so that all that is shown sums to one.</summary>
    public (IReadOnlyList<Suspect> Suspects, double Healthy, double None) Of(IReadOnlyList<Cure> cures)
    {
        Cure[] shown = [.. cures.Where(c => c.Probability > WorthALine)];
        var sum = shown.Sum(c => c.Probability) + posterior.Of[0] + posterior.None;
        Suspect[] suspects = [.. shown.Select((c, rank) => Say(c, rank, sum))];
        return (suspects, posterior.Of[0] / sum, posterior.None / sum);
    }

    private Suspect Say(Cure cure, int rank, double sum)
    {
        var main = cure.Hypotheses[0];
        var (explains, misfits) = rank < Explained && (cure.Probability > WorthAWord || rank < 2) ? explainer.Of(main) : ([], []);
        var lead = knowledge.Hypotheses[Leading(cure)].Faults;
        return new(
            cure.Part,
            lead[0],
            cure.Probability / sum,
            cure.Parts,
            Modes(cure, sum),
            rank < Told && cure.Probability > WorthTelling ? [.. chain.Of(main), .. explains] : explains,
            misfits,
            cure.IsPair ? "" : Separation.Of(cure.Parts, knowledge.Parts)
        )
        {
            Second = cure.IsPair ? lead[^1] : null,
            History = HistoryWords.Of(past, cure.Part),
        };
    }

    /// <summary>The likeliest story of the likeliest part: the head of a group is the part with most of its probability.</summary>
    private int Leading(Cure cure) => cure.Hypotheses.First(h => knowledge.Hypotheses[h].Part == cure.Part);

    private FaultShare[] Modes(Cure cure, double sum) =>
        [
            .. cure
                .Hypotheses.GroupBy(h => knowledge.Hypotheses[h].Faults[0])
                .Select(g => new FaultShare(g.Key, g.Sum(h => posterior.Of[h]) / sum))
                .Where(m => m.Probability > WorthALine)
                .OrderByDescending(m => m.Probability)
                .Take(MostModes),
        ];
}
