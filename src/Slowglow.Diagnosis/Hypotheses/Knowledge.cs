using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Next;
using Slowglow.Diagnosis.Priors;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>All that is worked out once for a circuit and kept: stories, priors, answers, sounds and stresses.</summary>
internal sealed class Knowledge
{
    /// <summary>Volts below which a unit's reach is not taken.</summary>
    private const double LeastReach = 5;

    private Knowledge(IWorldSource source, PriorMasses masses, IReadOnlyList<BlownFuse> blown, double reach)
    {
        Source = source;
        Masses = masses;
        UnitPriors = new UnitPriors(source.Sheet, source.Faults, masses);
        Blown = blown;
        Hypotheses = HypothesisList.From(source.Faults, masses.Of(source.Faults), blown);
        Answers = new AnswerStore(source, Hypotheses, reach);
        Symptoms = new SymptomStore(source, Hypotheses);
        Traits = new TraitStore(source, Hypotheses);
        Stresses = new StressStore(source, Hypotheses);
        Cascades = new Cascades(Hypotheses, Stresses);
        Probes = new CandidateProbes(source.Sheet);
        Parts = source.Sheet.Parts.ToDictionary(p => p.Designator);
    }

    public IWorldSource Source { get; }
    public PriorMasses Masses { get; }
    public UnitPriors UnitPriors { get; }
    public IReadOnlyList<BlownFuse> Blown { get; }
    public HypothesisList Hypotheses { get; }
    public AnswerStore Answers { get; }
    public SymptomStore Symptoms { get; }
    public TraitStore Traits { get; }
    public StressStore Stresses { get; }
    public Cascades Cascades { get; }
    public CandidateProbes Probes { get; }
    public IReadOnlyDictionary<string, Part> Parts { get; }

    public static Knowledge Of(IWorldSource source, IProgress<double>? progress, CancellationToken cancel)
    {
        var stress = source.Stress(Setup.Default, []);
        var masses = new PriorMasses(source.Sheet, stress, FailureFigures.Shipped);
        var blown = new FuseSearch(source).Find(Setup.Default, progress, cancel);
        return new(source, masses, blown, Reach(source, cancel));
    }

    /// <summary>The block of the probes worth proposing in a setup.</summary>
    public AnswerBlock BlockOf(Setup setup) => Answers.Candidates(setup, () => Probes.For(setup));

    private static double Reach(IWorldSource source, CancellationToken cancel)
    {
        Probe[] probes =
        [
            .. source
                .Sheet.Nets.Names.Where(n => n != NetTable.Ground)
                .Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc)),
        ];
        var answers = source.Ask(Setup.Default, [Array.Empty<Fault>()], probes, MeterClass.Handheld, null, cancel)[0];
        return answers.Where(a => a.HasValue).Select(a => Math.Abs(a.Value)).Append(LeastReach).Max();
    }
}
