using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Likelihood;
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

    public Posterior Weigh(Evidence evidence)
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
        foreach (var taken in Stages(evidence.Readings))
        {
            readings = SetOf(taken, Surviving(logs));
            Fit(readings, Surviving(logs), fits, prior, logs);
        }
        if (evidence.Readings.Count == 0)
        {
            Fit(readings, Surviving(logs), fits, prior, logs);
        }
        var heard = new ComplaintReader(new ChannelWords(knowledge.Source.Sheet.Signals)).Read(evidence.Complaint);
        var complaint = Complain(heard, logs);
        var none = Math.Log(HypothesisList.NonePrior) + readings.LogNone() + heard.Count * Math.Log(ComplaintEvidence.NoneChance);
        var (of, pNone) = Normalise(logs, none);
        var posterior = new Posterior(of, pNone, fits, readings, heard, complaint);
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
                logs[h] = Math.Log(list[h].Prior) + fits[h]!.LogLikelihood;
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
        singles.Complaint.Ensure(singles.Heard, [.. members.Distinct()], progress, cancel);
        foreach (var h in pairs)
        {
            logs[h] = logs[h] > bound ? logs[h] + singles.Complaint.Log(singles.Heard, h) : double.NegativeInfinity;
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
                logs[h] = double.IsNegativeInfinity(before[h]) ? before[h] : prior[h] + fits[h]!.LogLikelihood;
            }
        );
    }

    private ComplaintEvidence Complain(IReadOnlyList<Heard> heard, double[] logs)
    {
        var complaint = new ComplaintEvidence(
            knowledge.Source.Sheet,
            knowledge.Hypotheses,
            knowledge.Symptoms,
            knowledge.Stresses,
            knowledge.Masses
        );
        var surviving = Surviving(logs);
        complaint.Ensure(heard, surviving, progress, cancel);
        var before = (double[])logs.Clone();
        Array.Fill(logs, double.NegativeInfinity);
        foreach (var h in surviving)
        {
            logs[h] = before[h] + complaint.Log(heard, h);
        }
        return complaint;
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
