using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Doubts;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Looks;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>
/// P(story | evidence) ~ prior x likelihood of the readings x likelihood of the complaint. Setups are taken one after the other, and a story
/// that an earlier one has made hopeless is not solved in the next.
/// </summary>
internal sealed class Weighing(Knowledge knowledge, IProgress<double>? progress, CancellationToken cancel)
{
    /// <summary>A story this many nats behind the best is hopeless: odds of a million and a half to one.</summary>
    private const double Hopeless = 14;

    /// <summary>
    /// The model is wrong by the same amount in every reading that rests on it, so that ten readings are not ten witnesses: n of them count
    /// as n to this power less. Found by rehearsal (docs/rehearsal.md): counted whole, claims after many readings came true least.
    /// </summary>
    private const double Echo = 0.2;

    private static double Witness(int readings) => Math.Pow(Math.Max(readings, 1), -Echo);

    /// <summary>Least share of none-of-these where the evidence contradicts itself.</summary>
    private const double Contradicted = 0.5;

    /// <summary>Stories that the readings alone have left: what a reading in a new setup will be asked of.</summary>
    public IReadOnlyList<int> Left { get; private set; } = [];

    public Posterior Weigh(Evidence evidence)
    {
        var sifted = new Sifting(knowledge, progress, cancel).Of(evidence.Readings);
        var posterior = Weigh(evidence.Complaint, sifted);
        return sifted.Doubts.Count == 0 ? posterior : Humbled(posterior);
    }

    /// <summary>Beside a contradiction nothing is certain: none-of-these holds half at least.</summary>
    private static Posterior Humbled(Posterior posterior)
    {
        if (posterior.None >= Contradicted)
        {
            return posterior;
        }
        var share = (1 - Contradicted) / (1 - posterior.None);
        return posterior with { Of = Array.ConvertAll(posterior.Of, p => p * share), None = Contradicted };
    }

    private Posterior Weigh(string? words, Sifted sifted)
    {
        var list = knowledge.Hypotheses;
        var logs = new double[list.WithoutPairs];
        for (var h = 0; h < logs.Length; h++)
        {
            logs[h] = list[h].Prior > 0 ? Math.Log(list[h].Prior) : double.NegativeInfinity;
        }
        var prior = (double[])logs.Clone();
        var fits = new Fit?[list.WithoutPairs];
        var readings = new ReadingSet([], [], knowledge.Answers.Reach);
        foreach (var taken in Stages(sifted.Weighed))
        {
            readings = SetOf(taken, Surviving(logs));
            Fit(readings, Surviving(logs), fits, prior, logs);
        }
        if (sifted.Weighed.Count == 0)
        {
            Fit(readings, Surviving(logs), fits, prior, logs);
        }
        Left = Surviving(logs);
        var looks = new LookEvidence(knowledge, sifted.Looks);
        LookAt(looks, new(knowledge, sifted.Weighed), logs);
        var sheet = knowledge.Source.Sheet;
        var reader = new ComplaintReader(new ChannelWords(sheet.Signals), new ControlWords(sheet.Controls));
        var heard = reader.Read(words);
        var complaint = Complain(heard, logs, fits);
        var none =
            Math.Log(HypothesisList.NonePrior)
            + Witness(readings.Count) * readings.LogNone()
            + looks.LogNone
            + heard.Count * Math.Log(ComplaintEvidence.NoneChance);
        var (of, pNone) = Normalise(logs, none);
        var posterior = new Posterior(of, pNone, fits, readings, heard, complaint, sifted, looks)
        {
            PassedOver = reader.PassedOver(words),
        };
        return PairSearch.IsNeeded(posterior) ? WithPairs(posterior, logs, none) : posterior;
    }

    /// <summary>The pairs of faults that the readings suggest, solved as worlds with two faults and weighed beside the single ones.</summary>
    private Posterior WithPairs(Posterior singles, double[] logs, double none)
    {
        var list = knowledge.Hypotheses;
        int[] pairs = [.. new PairSearch(knowledge, singles.Readings, progress, cancel).Find()];
        foreach (var column in Enumerable.Range(0, singles.Readings.Count).Select(singles.Readings.Column))
        {
            column.Block.Ensure(pairs, progress, cancel);
        }
        var fits = singles.Fits;
        Array.Resize(ref logs, list.Count);
        Array.Resize(ref fits, list.Count);
        Array.Fill(logs, double.NegativeInfinity, singles.Of.Length, list.Count - singles.Of.Length);
        Parallel.ForEach(
            pairs,
            h =>
            {
                fits[h] = new Fit(singles.Readings, h);
                logs[h] = Math.Log(list[h].Prior) + Witness(singles.Readings.Count) * fits[h]!.LogLikelihood;
            }
        );
        ComplainOfPairs(singles, pairs, logs, none);
        var (of, pNone) = Normalise(logs, none);
        return singles with { Of = of, None = pNone, Fits = fits };
    }

    /// <summary>Words are judged by the members, whose sounds are solved where a pair still counts.</summary>
    private void ComplainOfPairs(Posterior singles, int[] pairs, double[] logs, double none)
    {
        var bound = Math.Max(logs.Max(), none) - Hopeless;
        int[] alive = [.. pairs.Where(h => logs[h] > bound)];
        var members = alive.Select(h => knowledge.Hypotheses[h].Members!.Value).SelectMany(m => new[] { m.First, m.Second });
        int[] asked = [.. members.Distinct()];
        singles.Complaint.Ensure(singles.Heard, asked, progress, cancel);
        singles.Looks.Ensure(asked, progress, cancel);
        var unsteady = new Unsteadiness(knowledge, singles.Sifted.Weighed);
        foreach (var h in pairs)
        {
            logs[h] =
                logs[h] > bound
                    ? logs[h] + singles.Complaint.Log(singles.Heard, h) + singles.Looks.Log(h) + unsteady.Log(h)
                    : double.NegativeInfinity;
        }
    }

    private void LookAt(LookEvidence looks, Unsteadiness unsteady, double[] logs)
    {
        var surviving = Surviving(logs);
        looks.Ensure(surviving, progress, cancel);
        foreach (var h in surviving)
        {
            logs[h] += looks.Log(h) + unsteady.Log(h);
        }
    }

    /// <summary>Readings setup by setup, each stage holding those of the stages before it.</summary>
    private static IEnumerable<Reading[]> Stages(IReadOnlyList<Reading> readings)
    {
        var bySetup = readings.GroupBy(r => SetupKey.Of(r.Setup)).OrderBy(g => g.First().Setup.PowerOff ? 1 : 0);
        Reading[] taken = [];
        foreach (var group in bySetup)
        {
            taken = [.. taken, .. group];
            yield return taken;
        }
    }

    private static int[] Surviving(double[] logs)
    {
        var bound = logs.Max() - Hopeless;
        return [.. Enumerable.Range(0, logs.Length).Where(h => logs[h] > bound || h == 0)];
    }

    private ReadingSet SetOf(Reading[] taken, int[] surviving)
    {
        var columns = taken.Select(r =>
        {
            knowledge.BlockOf(r.Setup);
            var column = knowledge.Answers.ColumnOf(r.Setup, r.Probe, r.Meter);
            column.Block.Ensure(surviving.Append(0), progress, cancel);
            return column;
        });
        return new(taken, [.. columns], knowledge.Answers.Reach);
    }

    private static void Fit(ReadingSet readings, int[] surviving, Fit?[] fits, double[] prior, double[] logs)
    {
        var before = (double[])logs.Clone();
        Array.Fill(logs, double.NegativeInfinity);
        Array.Clear(fits);
        Parallel.ForEach(
            surviving,
            h =>
            {
                fits[h] = new Fit(readings, h);
                logs[h] = double.IsNegativeInfinity(before[h])
                    ? before[h]
                    : prior[h] + Witness(readings.Count) * fits[h]!.LogLikelihood;
            }
        );
    }

    private ComplaintEvidence Complain(IReadOnlyList<Heard> heard, double[] logs, Fit?[] fits)
    {
        var complaint = new ComplaintEvidence(
            knowledge.Source.Sheet,
            knowledge.Hypotheses,
            knowledge.Symptoms,
            knowledge.Traits,
            knowledge.Stresses,
            knowledge.Answers,
            knowledge.Masses
        );
        int[] surviving = [.. Surviving(logs).OrderByDescending(h => logs[h])];
        complaint.Ensure(heard, surviving, progress, cancel);
        var before = (double[])logs.Clone();
        Array.Fill(logs, double.NegativeInfinity);
        foreach (var h in surviving)
        {
            logs[h] = before[h] + LogHeard(complaint, heard, h, fits[h]);
        }
        return complaint;
    }

    /// <summary>What a unit beyond an edge sounds like, its nominal world does not know.</summary>
    private static double LogHeard(ComplaintEvidence complaint, IReadOnlyList<Heard> heard, int h, Fit? fit)
    {
        var log = complaint.Log(heard, h);
        return fit is { IsAstray: true } ? Math.Max(log, heard.Count * Math.Log(ComplaintEvidence.NoneChance)) : log;
    }

    private static (double[] Of, double None) Normalise(double[] logs, double none)
    {
        var top = Math.Max(logs.Max(), none);
        var of = Array.ConvertAll(logs, l => Math.Exp(l - top));
        var pNone = Math.Exp(none - top);
        var sum = of.Sum() + pNone;
        return (Array.ConvertAll(of, p => p / sum), pNone / sum);
    }
}
