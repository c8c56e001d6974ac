using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>Every story that is weighed. The healthy unit is number 0; priors with that of none-of-these sum to one.</summary>
internal sealed class HypothesisList
{
    /// <summary>Common practice, no source: a unit comes in with a complaint and nothing wrong.</summary>
    public const double HealthyPrior = 0.03;

    /// <summary>Common practice, no source: two faults at once, a broken track, a drawing that is not of this unit.</summary>
    public const double NonePrior = 0.02;

    private readonly List<Hypothesis> all;
    private readonly Dictionary<(int, int), int> pairs = [];

    /// <summary>Priors before anything is known of this one unit.</summary>
    private readonly double[] tables;

    private HypothesisList(List<Hypothesis> all) =>
        (this.all, WithoutPairs, tables) = (all, all.Count, [.. all.Select(h => h.Prior)]);

    /// <summary>Stories so far; it grows as pairs of faults come under suspicion.</summary>
    public int Count => all.Count;

    /// <summary>Stories known from the start: the healthy unit, single faults, faults with the fuse they blew.</summary>
    public int WithoutPairs { get; }

    public Hypothesis this[int index] => all[index];

    /// <summary>The story as it was before a fuse blew: the cause alone.</summary>
    public int BeforeTheFuse(int index) => all[index].Cause ?? index;

    public IReadOnlyList<Fault> FaultsOf(int index) => all[index].Faults;

    /// <summary>
    /// Gives every story the prior that weights on single faults ask for; 1 leaves it as the tables have it. What all faults have together
    /// stays. Pairs take theirs when they next come under suspicion.
    /// </summary>
    /// <param name="weight">Factor on the prior of a single fault, above 0.</param>
    public void Weigh(Func<Fault, double> weight)
    {
        var weighed = new double[WithoutPairs];
        for (var h = 1; h < WithoutPairs; h++)
        {
            weighed[h] = tables[h] * weight(all[h].Faults[0]);
        }
        var scale = tables.Skip(1).Sum() / Math.Max(weighed.Sum(), double.Epsilon);
        for (var h = 1; h < WithoutPairs; h++)
        {
            all[h] = all[h] with { Prior = weighed[h] * scale };
        }
    }

    /// <summary>The story of two single faults at once, made at the first call.</summary>
    public int PairOf(int first, int second, double prior)
    {
        if (!pairs.TryGetValue((first, second), out var index))
        {
            index = all.Count;
            pairs.Add((first, second), index);
            all.Add(new([.. all[first].Faults, .. all[second].Faults], prior, null, -1, -1) { Members = (first, second) });
        }
        all[index] = all[index] with { Prior = prior };
        return index;
    }

    /// <summary>Builds the list from single faults with their prior masses and the chances that a fault blows a fuse.</summary>
    public static HypothesisList From(IReadOnlyList<Fault> faults, double[] masses, IReadOnlyList<BlownFuse> blown)
    {
        var total = masses.Sum();
        var share = total > 0 ? (1 - HealthyPrior - NonePrior) / total : 0;
        var ladder = SeverityLadder.Of(faults);
        var list = new List<Hypothesis> { new([], HealthyPrior, null, -1, -1) };
        var spared = Enumerable.Repeat(1.0, faults.Count).ToArray();
        foreach (var b in blown)
        {
            spared[b.Cause] -= b.Chance;
        }
        for (var i = 0; i < faults.Count; i++)
        {
            var soft = SeverityLadder.IsSoft(faults[i]);
            var milder =
                ladder[i].Milder >= 0 ? ladder[i].Milder + 1
                : soft ? 0
                : -1;
            var worse = ladder[i].Worse >= 0 ? ladder[i].Worse + 1 : -1;
            list.Add(new([faults[i]], masses[i] * share * Math.Max(spared[i], 0), null, milder, worse));
        }
        foreach (var b in blown)
        {
            var pair = new[] { faults[b.Cause], new Fault(b.Fuse, "", FailureMode.Open) };
            list.Add(new(pair, masses[b.Cause] * share * b.Chance, b.Fuse, -1, -1) { Cause = b.Cause + 1 });
        }
        return new HypothesisList(list);
    }
}
