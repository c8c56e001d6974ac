using Slowglow.Circuits;
using Slowglow.Diagnosis.Advice;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Next;
using Slowglow.Diagnosis.RootCauses;
using Slowglow.Diagnosis.Source;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis;

/// <summary>Weighs evidence against every fault of a circuit. Keeps solved worlds, so a further reading is cheap. Thread-safe.</summary>
public sealed class Diagnostician
{
    /// <summary>A story less likely than this takes no part in the choice of the next reading.</summary>
    private const double Plausible = 1e-4;
    private const int MostPlausible = 220;

    /// <summary>A story likelier than this is solved in every setup on offer.</summary>
    private const double Likely = 1e-3;
    private const int MostLikely = 120;

    private readonly IWorldSource source;
    private readonly Lock gate = new();
    private Knowledge? knowledge;
    private Foresight? foresight;

    public Diagnostician(Worlds worlds)
        : this(new WorldSource(worlds)) { }

    internal Diagnostician(IWorldSource source) => this.source = source;

    /// <summary>Ranks the suspects and names the next readings.</summary>
    public DiagnosisResult Diagnose(Evidence evidence, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        lock (gate)
        {
            knowledge ??= Knowledge.Of(source, progress, cancel);
            knowledge.Hypotheses.Weigh(knowledge.UnitPriors.For(evidence));
            var weighing = new Weighing(knowledge, progress, cancel);
            var posterior = weighing.Weigh(evidence);
            var plausible = posterior.Above(Plausible, MostPlausible);
            var likely = posterior.Above(Likely, MostLikely);
            var setups = new Benches(knowledge);
            var offered = setups.On(evidence.Setups);
            foresight = new(weighing.Left, plausible, offered);
            var benches = setups.Solve(offered, plausible, likely, progress, cancel);
            var cures = new CureGroups(knowledge, posterior, benches).Cures;
            var next = new ReadingChoice(knowledge, posterior, cures, plausible, evidence.Setups).Best(benches);
            return Result(evidence, posterior, cures, next, cancel);
        }
    }

    /// <summary>
    /// Solves what the readings proposed last will ask for, so that weighing them takes no longer than a blink. Meant for the time in which they are being
    /// taken; what was solved when it is cancelled is kept.
    /// </summary>
    /// <param name="next">Proposed by <see cref="Diagnose"/>; their setups come first.</param>
    /// <param name="cancel">Stops it.</param>
    public void Foresee(IReadOnlyList<NextReading> next, CancellationToken cancel)
    {
        foreach (var step in foresight?.Steps(next.Select(n => n.Setup)) ?? [])
        {
            lock (gate)
            {
                cancel.ThrowIfCancellationRequested();
                step(knowledge!, cancel);
            }
        }
    }

    /// <summary>Every single story with its prior: what a unit may have come in with. The cause first, then the fuse it blew, if any.</summary>
    public IReadOnlyList<Story> Stories(IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        lock (gate)
        {
            knowledge ??= Knowledge.Of(source, progress, cancel);
            var list = knowledge.Hypotheses;
            return
            [
                .. Enumerable
                    .Range(1, list.Count - 1)
                    .Where(h => list[h].Faults.Count == 1 || list[h].BlownFuse is not null)
                    .Select(h => new Story(list[h].Faults, list[h].Prior)),
            ];
        }
    }

    private DiagnosisResult Result(
        Evidence evidence,
        Posterior posterior,
        IReadOnlyList<Cure> cures,
        IReadOnlyList<NextReading> next,
        CancellationToken cancel
    )
    {
        var firstSetup = evidence.Setups.Count > 0 ? evidence.Setups[0].Name : "";
        var explainer = new Explainer(knowledge!, posterior, firstSetup);
        var chain = new ChainWords(knowledge!, cancel);
        var (suspects, healthy, none) = new SuspectList(knowledge!, posterior, explainer, chain, evidence.Past).Of(cures);
        var (advice, lead) = (new BenchAdvice(knowledge!.Parts), suspects.Count > 0 ? suspects[0] : null);
        var stop = posterior.Sifted.Doubts.Count == 0 ? advice.Stop(lead, next) : "";
        var verdicts = Verdicts.Of(posterior);
        var causes = new RootCauseSearch(knowledge!).Of(cures, verdicts, cancel);
        return new(
            suspects,
            healthy,
            none,
            next,
            causes.Parts,
            [
                .. posterior.Heard.Select(w => Understood(posterior, w)),
                .. posterior.PassedOver.Select(w => new UnderstoodWord(w, "", null, false)),
            ],
            verdicts,
            SummaryLine.Say(suspects, healthy, none, next, posterior.Sifted.Weighed.Count, posterior.Sifted.Doubts, stop)
        )
        {
            Doubts = posterior.Sifted.Doubts,
            RuledOut = new RuledOut(knowledge!, posterior, firstSetup).Say(),
            Prove = advice.Prove(lead),
            Stop = stop,
            BeforePower = causes.BeforePower,
        };
    }

    private static UnderstoodWord Understood(Posterior posterior, Heard word) =>
        new(
            word.Words,
            (word.Denied ? "no " : "") + Descriptors.Say(word.Descriptor) + word.Setting,
            word.Channel,
            posterior.Complaint.IsComputed(word)
        );
}
