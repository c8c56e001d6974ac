namespace Slowglow.Diagnosis.Next;

/// <summary>Joins the bins of a predictive into two to four ranges in which different cures lead.</summary>
internal static class OutcomeRanges
{
    private sealed record Run(int First, int Last, double[] Joint)
    {
        public double Probability { get; } = Joint.Sum();
        public int Leader { get; } = Array.IndexOf(Joint, Joint.Max());

        public Run With(Run next) => new(First, next.Last, [.. Joint.Zip(next.Joint, (a, b) => a + b)]);
    }

    public static IReadOnlyList<OutcomeRange> Of(Predictive predictive, int most, double tooRare)
    {
        var runs = FigureRuns(predictive);
        while (runs.Count > 1 && (runs.Count > most || runs.Min(r => r.Probability) < tooRare))
        {
            JoinLeast(runs);
        }
        var ranges = runs.Select(r => ToRange(r, predictive)).ToList();
        var none = Column(predictive, predictive.Bins - 1);
        if (none.Sum() > tooRare)
        {
            ranges.Add(new(double.NaN, double.NaN, true, none.Sum(), Shares(none)));
        }
        return ranges;
    }

    private static List<Run> FigureRuns(Predictive predictive)
    {
        var runs = new List<Run>();
        for (var b = 0; b < predictive.Bins - 1; b++)
        {
            var run = new Run(b, b, Column(predictive, b));
            if (runs.Count > 0 && runs[^1].Leader == run.Leader)
            {
                runs[^1] = runs[^1].With(run);
            }
            else
            {
                runs.Add(run);
            }
        }
        return runs;
    }

    private static void JoinLeast(List<Run> runs)
    {
        var least = Enumerable.Range(0, runs.Count).MinBy(i => runs[i].Probability);
        var left =
            least == runs.Count - 1 || (least > 0 && runs[least - 1].Probability < runs[least + 1].Probability)
                ? least - 1
                : least;
        runs[left] = runs[left].With(runs[left + 1]);
        runs.RemoveAt(left + 1);
        for (var i = runs.Count - 1; i > 0; i--)
        {
            if (runs[i].Leader == runs[i - 1].Leader)
            {
                runs[i - 1] = runs[i - 1].With(runs[i]);
                runs.RemoveAt(i);
            }
        }
    }

    private static OutcomeRange ToRange(Run run, Predictive predictive)
    {
        var low = run.First == 0 ? double.NegativeInfinity : predictive.Edges[run.First - 1];
        var high = run.Last >= predictive.Edges.Length ? double.PositiveInfinity : predictive.Edges[run.Last];
        return new(low, high, false, run.Probability, Shares(run.Joint));
    }

    private static double[] Column(Predictive predictive, int bin)
    {
        var joint = new double[predictive.Cures];
        for (var c = 0; c < joint.Length; c++)
        {
            joint[c] = predictive.At(c, bin);
        }
        return joint;
    }

    private static double[] Shares(double[] joint)
    {
        var sum = Math.Max(joint.Sum(), 1e-300);
        return Array.ConvertAll(joint, j => j / sum);
    }
}
