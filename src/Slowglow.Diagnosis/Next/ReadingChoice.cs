using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>Chooses the readings that tell most about which part to replace for their minutes and risk.</summary>
internal sealed class ReadingChoice
{
    private const double Settled = 0.95;
    private const double LeastBits = 0.05;
    private const int Shown = 5;

    private readonly Knowledge knowledge;
    private readonly Posterior posterior;
    private readonly IReadOnlyList<Cure> cures;
    private readonly IReadOnlyList<Active> active;
    private readonly ReadingCost cost;
    private readonly HashSet<(string, string, string, ProbeKind)> read;

    public ReadingChoice(
        Knowledge knowledge,
        Posterior posterior,
        IReadOnlyList<Cure> cures,
        int[] plausible,
        IReadOnlyList<Setup> setups
    )
    {
        (this.knowledge, this.posterior, this.cures) = (knowledge, posterior, cures);
        active = ActiveOf(plausible);
        var last = posterior.Sifted.All.LastOrDefault();
        var current = last?.Setup ?? setups.FirstOrDefault() ?? Setup.Default;
        var generator = last?.Probe.Kind == ProbeKind.Level;
        cost = new(knowledge.Source.Sheet, current, generator, ChanceOfOverload());
        read = [.. posterior.Sifted.Weighed.Select(r => Key(r.Setup, r.Probe))];
    }

    /// <summary>Best first; empty when nothing is worth its minutes.</summary>
    public IReadOnlyList<NextReading> Best(IReadOnlyList<Bench> benches)
    {
        if (cures.Count == 0 || cures[0].Probability > Settled)
        {
            return [];
        }
        var proposals = benches.SelectMany(Weigh).Where(p => p.Bits >= LeastBits).OrderByDescending(p => p.Rate);
        var says = new OutcomeWords(cures);
        return
        [
            .. proposals
                .DistinctBy(p => (p.Probe.Red, p.Probe.Kind))
                .Take(Shown)
                .Select(p => says.Say(p, PredictiveOf(p.Bench, p.Index), Leads(p))),
        ];
    }

    private static (string, string, string, ProbeKind) Key(Setup setup, Probe probe) =>
        (SetupKey.Of(setup), probe.Red, probe.Black, probe.Kind);

    private IReadOnlyList<Proposal> Weigh(Bench bench)
    {
        var proposals = new Proposal?[bench.Block.Probes.Count];
        Parallel.For(
            0,
            proposals.Length,
            p =>
            {
                var probe = bench.Block.Probes[p];
                if (!read.Contains(Key(bench.Setup, probe)) && bench.Block.KindOf(0, p) != AnswerKind.NotApplicable)
                {
                    var volts = HighestVolts(bench.Block, p);
                    proposals[p] = new(
                        bench,
                        p,
                        PredictiveOf(bench, p).Bits(),
                        cost.Minutes(probe, bench.Setup),
                        cost.WeighedMinutes(probe, bench.Setup),
                        cost.RiskMinutes(probe, bench.Setup, volts),
                        cost.Risk(probe, bench.Setup, volts)
                    );
                }
            }
        );
        return [.. proposals.OfType<Proposal>()];
    }

    private Predictive PredictiveOf(Bench bench, int p)
    {
        var predictions = new Prediction?[active.Count];
        for (var i = 0; i < active.Count; i++)
        {
            var h = active[i].Hypothesis;
            predictions[i] = bench.Block.Has(h) ? posterior.Fits[h]!.Predict(bench.Block, p) : null;
        }
        var probe = bench.Block.Probes[p];
        var broad = new Broad(probe, bench.Block.Alone(0, p), knowledge.Answers.Reach);
        return Predictive.Of(predictions, active, cures.Count + 2, broad, posterior.None, probe);
    }

    /// <summary>What the leading stories would show, in words that the proposal can quote.</summary>
    private IReadOnlyList<(Cure Cure, Prediction Prediction)> Leads(Proposal p) =>
        [
            .. cures
                .Take(4)
                .Where(c => p.Bench.Block.Has(c.Hypotheses[0]))
                .Select(c => (c, posterior.Fits[c.Hypotheses[0]]!.Predict(p.Bench.Block, p.Index))),
        ];

    private List<Active> ActiveOf(int[] plausible)
    {
        var cureOf = new Dictionary<int, int> { [0] = cures.Count };
        for (var c = 0; c < cures.Count; c++)
        {
            foreach (var h in cures[c].Hypotheses)
            {
                cureOf[h] = c;
            }
        }
        return [.. plausible.Append(0).Distinct().Select(h => new Active(h, cureOf[h], posterior.Of[h]))];
    }

    /// <summary>Volts that the place holds in a healthy unit, dc or rms.</summary>
    private double HighestVolts(AnswerBlock block, int p)
    {
        var probe = block.Probes[p];
        if (probe.Kind is not (ProbeKind.Dc or ProbeKind.Ac or ProbeKind.Level) || probe.IsInlet)
        {
            return 0;
        }
        double highest = 0;
        for (var q = 0; q < block.Probes.Count; q++)
        {
            var other = block.Probes[q];
            var isHere = other.Red == probe.Red || other.Red == probe.Black;
            if (isHere && other.Kind is ProbeKind.Dc or ProbeKind.Ac && block.KindOf(0, q) == AnswerKind.Value)
            {
                highest = Math.Max(highest, Math.Abs(Scale.Of(other).From(block.MeanOf(0, q))));
            }
        }
        return highest;
    }

    private double ChanceOfOverload() =>
        knowledge.Blown.Count == 0
            ? 0
            : Enumerable
                .Range(0, posterior.Of.Length)
                .Where(h => knowledge.Hypotheses[h].BlownFuse is not null)
                .Sum(h => posterior.Of[h]);
}
