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
    private const double Settled = 0.98;
    private const double LeastBits = 0.03;
    private const int Shown = 5;

    /// <summary>Where the first reading alone promises less than this share of what is open, the one after it is looked at too.</summary>
    private const double LittleShare = 0.5;
    private const int FewFirst = 8;

    /// <summary>A cure below this is not held against the leader in words.</summary>
    private const double WorthNaming = 0.01;
    private const int FewSecond = 10;
    private const int FewActive = 80;

    /// <summary>Outcomes that all readings are told apart by, and how many of these are looked at more closely.</summary>
    private const int CoarseEdges = 10;
    private const int MostCloser = 60;

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
        Proposal[] single =
        [
            .. Closer([.. benches.SelectMany(Weigh)]).Where(p => p.Bits >= LeastBits).OrderByDescending(p => p.Rate),
        ];
        var proposals = FirstSettlesLittle(single) ? TwoAhead(single).OrderByDescending(p => p.Worth) : single.AsEnumerable();
        var says = new OutcomeWords(cures);
        return
        [
            .. proposals
                .DistinctBy(p => (p.Probe.Red, p.Probe.Kind))
                .Take(Shown)
                .Select(p => says.Say(p, PredictiveOf(p.Bench, p.Index, Predictive.MostEdges), Leads(p))),
        ];
    }

    /// <summary>The best of all readings on offer once more, with their outcomes told apart more finely.</summary>
    private Proposal[] Closer(Proposal[] all)
    {
        var every = Enumerable.Range(0, all.Length);
        var fast = every.OrderByDescending(p => all[p].Rate).Take(MostCloser);
        var telling = every.OrderByDescending(p => all[p].Bits).Take(FewSecond);
        Proposal[] best = [.. fast.Union(telling).Select(p => all[p])];
        Parallel.For(
            0,
            best.Length,
            p => best[p] = best[p] with { Bits = PredictiveOf(best[p].Bench, best[p].Index, Predictive.MostEdges).Bits() }
        );
        return best;
    }

    /// <summary>Less than half of what is open about the cure.</summary>
    private bool FirstSettlesLittle(Proposal[] single)
    {
        var open = cures.Select(c => c.Probability).Append(posterior.Of[0]).Append(posterior.None).Where(p => p > 0);
        return single.Length > 1 && single[0].Bits < LittleShare * open.Sum(p => -p * Math.Log2(p));
    }

    /// <summary>The best few with the reading that would follow: a changeover then serves both.</summary>
    private Proposal[] TwoAhead(Proposal[] single)
    {
        Active[] few = [.. active.OrderByDescending(a => a.Probability).Take(FewActive)];
        Proposal[] firsts = [.. single.Take(FewFirst)];
        Proposal[] seconds = [.. firsts.Concat(single.OrderByDescending(p => p.Bits).Take(FewSecond)).Distinct()];
        var tables = new OutcomeTable[seconds.Length];
        Parallel.For(0, seconds.Length, s => tables[s] = TableOf(seconds[s], few));
        var ahead = new Lookahead(few, cures.Count + 2, posterior.None);
        var rated = new Proposal[firsts.Length];
        Parallel.For(0, firsts.Length, f => rated[f] = WithSecond(firsts[f], f, seconds, tables, ahead));
        return [.. rated, .. single[firsts.Length..]];
    }

    private Proposal WithSecond(Proposal first, int f, Proposal[] seconds, OutcomeTable[] tables, Lookahead ahead)
    {
        var then = cost.After(first.Bench.Setup, first.Probe.Kind == ProbeKind.Level);
        var after = Enumerable
            .Range(0, seconds.Length)
            .Where(s => s != f)
            .Select(s => new Lookahead.Second(tables[s], Minutes(seconds[s], then)))
            .ToList();
        var (bits, minutes) = ahead.After(tables[f], after);
        var own = cost.FullMinutes(first.Probe, first.Bench.Setup) + first.RiskMinutes;
        return first with { RateOfTwo = first.Favour * (first.Bits + bits) / (own + minutes) };
    }

    private static double Minutes(Proposal second, ReadingCost then) =>
        then.FullMinutes(second.Probe, second.Bench.Setup) + second.RiskMinutes;

    private OutcomeTable TableOf(Proposal proposal, IReadOnlyList<Active> few)
    {
        var (block, p) = (proposal.Bench.Block, proposal.Index);
        var predictions = few.Select(a =>
            block.Has(a.Hypothesis) ? posterior.Fits[a.Hypothesis]!.Predict(block, p) : (Prediction?)null
        );
        return OutcomeTable.Of(
            [.. predictions],
            few,
            new Broad(proposal.Probe, block.Alone(0, p), knowledge.Answers.Reach),
            proposal.Probe
        );
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
                        PredictiveOf(bench, p, CoarseEdges).Bits(),
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

    private Predictive PredictiveOf(Bench bench, int p, int most)
    {
        var predictions = new Prediction?[active.Count];
        for (var i = 0; i < active.Count; i++)
        {
            var h = active[i].Hypothesis;
            predictions[i] = bench.Block.Has(h) ? posterior.Fits[h]!.Predict(bench.Block, p) : null;
        }
        var probe = bench.Block.Probes[p];
        var broad = new Broad(probe, bench.Block.Alone(0, p), knowledge.Answers.Reach);
        return Predictive.Of(predictions, active, cures.Count + 2, broad, posterior.None, probe, most);
    }

    /// <summary>What the leading stories would show, in words that the proposal can quote.</summary>
    private IReadOnlyList<(Cure Cure, Prediction Prediction)> Leads(Proposal p) =>
        [
            .. cures
                .Take(4)
                .Where((c, rank) => rank == 0 || c.Probability > WorthNaming)
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
