using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Priors;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>How likely each hypothesis makes the words of a complaint.</summary>
internal sealed class ComplaintEvidence(
    Sheet sheet,
    HypothesisList hypotheses,
    SymptomStore symptoms,
    TraitStore traits,
    StressStore stresses,
    AnswerStore answers,
    PriorMasses masses
)
{
    /// <summary>Chance of any word when the fault is none of those computed.</summary>
    public const double NoneChance = 0.3;

    /// <summary>A valve this far over its anode limit shows it.</summary>
    private const double GlowRatio = 1.4;

    /// <summary>A part this far over its watts smokes.</summary>
    private const double SmokeRatio = 3;

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
                symptoms.Ensure(channel, word, wanted, progress, cancel);
            }
        }
        foreach (var word in heard)
        {
            EnsureMore(word, wanted, progress, cancel);
        }
    }

    /// <summary>Traits of the sound, and the inlet current of a unit that is said to be dead.</summary>
    private void EnsureMore(Heard word, IReadOnlyList<int> wanted, IProgress<double>? progress, CancellationToken cancel)
    {
        if (TraitOdds.Of(word.Descriptor) is { } trait)
        {
            foreach (var channel in ChannelsOf(word))
            {
                traits.Ensure(word, channel, symptoms.SetupOf(channel, word), trait, wanted, progress, cancel);
            }
        }
        if (word.Descriptor == Descriptor.NoPower)
        {
            Inlet.Block.Ensure(wanted.Append(0), progress, cancel);
        }
    }

    private AnswerColumn Inlet =>
        answers.ColumnOf(Setup.Default, new(Probe.Inlet, Probe.Inlet, NetTable.Ground, ProbeKind.Ac), MeterClass.Handheld);

    /// <summary>Log probability of all the words under a hypothesis, and of what was left unsaid.</summary>
    public double Log(IReadOnlyList<Heard> heard, int hypothesis) =>
        heard.Sum(w => Math.Log(Chance(w, hypothesis))) + LogUnsaid(heard, hypothesis);

    /// <summary>Of the channels that the words of trouble speak of, what would have been mentioned too.</summary>
    private double LogUnsaid(IReadOnlyList<Heard> heard, int hypothesis)
    {
        if (hypotheses[hypothesis].Members is var (first, second))
        {
            return Math.Min(LogUnsaid(heard, first), LogUnsaid(heard, second));
        }

        Heard[] trouble = [.. heard.Where(w => !w.Denied && w.Descriptor != Descriptor.Fine)];
        double sum = 0;
        foreach (var word in trouble.Where(w => Descriptors.IsOfSignal(w.Descriptor)).DistinctBy(w => (w.Channel, w.Condition)))
        {
            var said = trouble.Where(w => w.Channel is null || w.Channel == word.Channel).Select(w => w.Descriptor).ToHashSet();
            sum += ChannelsOf(word)
                .Select(c => Math.Log(Unsaid.Chance(said, symptoms.Of(c, word, hypothesis))))
                .DefaultIfEmpty(0)
                .Max();
        }

        return sum;
    }

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
            Descriptor.Smoke => OfSmoke(hypothesis),
            Descriptor.NoPower => OfNoPower(hypothesis),
            Descriptor.Noise or Descriptor.Squeal => OfTrait(word, hypothesis),
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
            .Select(c => (c, symptoms.Of(c, word, hypothesis)))
            .MaxBy(p => SymptomOdds.Of(word.Descriptor, p.Item2));

    private double OfSignal(Heard word, int hypothesis)
    {
        var chances = ChannelsOf(word).Select(c => OfChannel(word, c, hypothesis));
        if (word.Descriptor == Descriptor.Fine)
        {
            return chances.Min();
        }
        return word.Denied ? 1 - chances.Max() : chances.Max();
    }

    private double OfChannel(Heard word, string channel, int hypothesis)
    {
        var plain = SymptomOdds.Of(word.Descriptor, symptoms.Of(channel, word, hypothesis));
        if (
            TraitOdds.Of(word.Descriptor) is not { } trait
            || traits.Of(word, channel, trait, hypothesis) is not { } now
            || traits.Of(word, channel, trait, 0) is not { } healthy
        )
        {
            return plain;
        }
        return trait == Trait.HumTones
            ? Math.Max(0.03, plain * TraitOdds.Tone(word.Descriptor, now))
            : TraitOdds.Chance(word.Descriptor, now, healthy) ?? plain;
    }

    /// <summary>Noise and squeal: what the world shows, or what parts of this kind are known for, whichever is more.</summary>
    private double OfTrait(Heard word, int hypothesis)
    {
        var trait = TraitOdds.Of(word.Descriptor)!.Value;
        var computed = ChannelsOf(word)
            .Select(c =>
                traits.Of(word, c, trait, hypothesis) is { } now && traits.Of(word, c, trait, 0) is { } healthy
                    ? TraitOdds.Chance(word.Descriptor, now, healthy) ?? 0
                    : 0
            )
            .DefaultIfEmpty(0)
            .Max();
        return Math.Max(computed, OfPractice(word.Descriptor, hypothesis));
    }

    /// <summary>Something far over its watts.</summary>
    private double OfSmoke(int hypothesis)
    {
        var healthy = stresses.Of(0);
        var worst = stresses
            .Of(hypotheses.BeforeTheFuse(hypothesis))
            .Values.Where(s => !double.IsNaN(s.WattsRatio))
            .Select(s => s.WattsRatio - Math.Max(0, healthy.GetValueOrDefault(s.Part)?.WattsRatio - 1 ?? 0))
            .DefaultIfEmpty(0)
            .Max();
        return 0.03 + 0.9 / (1 + Math.Exp(-(worst - SmokeRatio) / 0.5));
    }

    /// <summary>A unit that draws nothing from the mains shows no light.</summary>
    private double OfNoPower(int hypothesis)
    {
        var column = Inlet;
        var practice = OfPractice(Descriptor.NoPower, hypothesis);
        if (!column.Block.Has(hypothesis))
        {
            return practice;
        }
        var (now, healthy) = (column.Block.Alone(hypothesis, column.Index), column.Block.Alone(0, column.Index));
        if (!now.HasFigure || !healthy.HasFigure)
        {
            return practice;
        }
        var scale = Scale.Of(column.Probe);
        var share = scale.From(now.Mean) / Math.Max(scale.From(healthy.Mean), 1e-4);
        return 0.04 + 0.9 / (1 + Math.Exp((share - 0.25) / 0.06));
    }

    private IEnumerable<string> ChannelsOf(Heard word) => word.Channel is null ? channels : [word.Channel];

    private double OfFuse(Heard word, int hypothesis)
    {
        var h = hypotheses[hypothesis];
        var blown = h.BlownFuse ?? h.Faults.FirstOrDefault(IsBlown)?.Part;
        if (blown is null)
        {
            return 0.03;
        }
        var saysMains = word.Words.Contains("mains", StringComparison.Ordinal);
        var saysRail = word.Words.Contains("rail", StringComparison.Ordinal);
        var isMains = mainsFuses.Contains(blown);
        return (saysMains && !isMains) || (saysRail && isMains) ? 0.15 : 0.95;
    }

    private bool IsBlown(Fault fault) => fault.Mode == FailureMode.Open && masses.KindOf(fault.Part) == PartKind.Fuse;

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
