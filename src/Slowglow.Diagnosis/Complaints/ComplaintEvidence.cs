using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Priors;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>How likely each hypothesis makes the words of a complaint.</summary>
internal sealed class ComplaintEvidence(
    Sheet sheet,
    HypothesisList hypotheses,
    SymptomStore symptoms,
    StressStore stresses,
    PriorMasses masses
)
{
    /// <summary>Chance of any word when the fault is none of those computed.</summary>
    public const double NoneChance = 0.3;

    /// <summary>A valve this far over its anode limit shows it.</summary>
    private const double GlowRatio = 1.4;

    private readonly string[] channels = [.. sheet.Signals.Select(s => s.Name)];
    private readonly HashSet<string> valves = [.. sheet.Parts.OfType<ValvePart>().Select(v => v.Designator)];
    private readonly HashSet<string> mainsFuses =
    [
        .. sheet
            .Parts.OfType<FusePart>()
            .Where(f => f.Pins.Any(p => p.Net is NetTable.Live or NetTable.Neutral))
            .Select(f => f.Designator),
    ];

    /// <summary>True when a word was taken as evidence that worlds compute.</summary>
    public bool IsComputed(Heard heard) =>
        Descriptors.IsComputed(heard.Descriptor) && (!Descriptors.IsOfSignal(heard.Descriptor) || channels.Length > 0);

    /// <summary>Solves the signals that the words need.</summary>
    public void Ensure(
        IReadOnlyList<Heard> heard,
        IReadOnlyList<int> wanted,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        foreach (var word in heard.Where(w => Descriptors.IsOfSignal(w.Descriptor) && IsComputed(w)))
        {
            foreach (var channel in ChannelsOf(word))
            {
                symptoms.Ensure(channel, word.VolumeDown, wanted, progress, cancel);
            }
        }
    }

    /// <summary>Log probability of all the words under a hypothesis.</summary>
    public double Log(IReadOnlyList<Heard> heard, int hypothesis) => heard.Sum(w => Math.Log(Chance(w, hypothesis)));

    /// <summary>
    /// Probability of one word under a hypothesis. Of two faults at once either may earn a word of trouble, and both must leave alone what
    /// is said to be well.
    /// </summary>
    public double Chance(Heard word, int hypothesis)
    {
        if (hypotheses[hypothesis].Members is var (first, second))
        {
            var (a, b) = (Chance(word, first), Chance(word, second));
            return word.Denied || word.Descriptor == Descriptor.Fine ? Math.Min(a, b) : Math.Max(a, b);
        }
        if (Descriptors.IsOfSignal(word.Descriptor))
        {
            return channels.Length == 0 ? NoneChance : OfSignal(word, hypothesis);
        }
        var said = word.Descriptor switch
        {
            Descriptor.BlowsFuse => OfFuse(word, hypothesis),
            Descriptor.RedGlow => OfGlow(hypothesis),
            _ => OfPractice(word.Descriptor, hypothesis),
        };
        return word.Denied ? 1 - said : said;
    }

    /// <summary>How the channel that a word speaks of sounds under a hypothesis: the worst one when none is named.</summary>
    public (string Channel, Symptoms Symptoms)? Sounds(Heard word, int hypothesis) =>
        hypotheses[hypothesis].Members is var (first, second)
            ? Sounds(word, Chance(word, first) > Chance(word, second) ? first : second)
        : !Descriptors.IsOfSignal(word.Descriptor) || channels.Length == 0 ? null
        : ChannelsOf(word)
            .Select(c => (c, symptoms.Of(c, word.VolumeDown, hypothesis)))
            .MaxBy(p => SymptomOdds.Of(word.Descriptor, p.Item2));

    private double OfSignal(Heard word, int hypothesis)
    {
        var chances = ChannelsOf(word).Select(c => SymptomOdds.Of(word.Descriptor, symptoms.Of(c, word.VolumeDown, hypothesis)));
        if (word.Descriptor == Descriptor.Fine)
        {
            return chances.Min();
        }
        return word.Denied ? 1 - chances.Max() : chances.Max();
    }

    private IEnumerable<string> ChannelsOf(Heard word) => word.Channel is null ? channels : [word.Channel];

    private double OfFuse(Heard word, int hypothesis)
    {
        var h = hypotheses[hypothesis];
        var blown = h.BlownFuse ?? h.Faults.FirstOrDefault(f => masses.KindOf(f.Part) == PartKind.Fuse)?.Part;
        if (blown is null)
        {
            return 0.03;
        }
        var saysMains = word.Words.Contains("mains", StringComparison.Ordinal);
        var saysRail = word.Words.Contains("rail", StringComparison.Ordinal);
        var isMains = mainsFuses.Contains(blown);
        return (saysMains && !isMains) || (saysRail && isMains) ? 0.15 : 0.95;
    }

    private double OfGlow(int hypothesis)
    {
        var worst = stresses
            .Of(hypothesis)
            .Values.Where(s => valves.Contains(s.Part) && !double.IsNaN(s.WattsRatio))
            .Select(s => s.WattsRatio)
            .DefaultIfEmpty(0)
            .Max();
        return 0.03 + 0.92 / (1 + Math.Exp(-(worst - GlowRatio) / 0.15));
    }

    private double OfPractice(Descriptor descriptor, int hypothesis) =>
        hypotheses[hypothesis].IsHealthy
            ? 0.05
            : PracticeWeights.Shipped.Of(descriptor, masses.KindOf(hypotheses[hypothesis].Part));
}
