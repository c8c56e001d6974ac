using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Priors;

/// <summary>
/// Sharpens priors by what past jobs on the same sheet came down to: the table's prior counts as some jobs already seen (the mean of a
/// Dirichlet distribution), first over parts, then over a part's ways to fail.
/// </summary>
internal sealed class HistoryShift
{
    /// <summary>Jobs that the table is worth. Weak parts of a model are common enough for one find in one job to count (no source).</summary>
    public const double TableJobs = 20;

    /// <summary>Finds of one part that the table's split over its modes is worth (no source).</summary>
    private const double TableFinds = 4;

    private readonly PastJobs past;
    private readonly Dictionary<string, double> parts;
    private readonly Dictionary<(string, FailureMode), double> modes;

    /// <param name="masses">Table mass of every fault, in the order of <paramref name="faults"/>; any scale.</param>
    public HistoryShift(PastJobs past, IReadOnlyList<Fault> faults, IReadOnlyList<double> masses)
    {
        this.past = past;
        var total = masses.Sum();
        var weighed = faults.Zip(masses, (f, m) => (f.Part, f.Mode, Mass: m / total)).ToList();
        parts = weighed.GroupBy(w => w.Part).ToDictionary(g => g.Key, g => g.Sum(w => w.Mass));
        modes = weighed.GroupBy(w => (w.Part, w.Mode)).ToDictionary(g => g.Key, g => g.Sum(w => w.Mass));
    }

    /// <summary>Factor on the mass of a fault.</summary>
    public double Of(Fault fault)
    {
        var (part, mode) = (parts[fault.Part], modes[(fault.Part, fault.Mode)] / parts[fault.Part]);
        var ofPart = PartShare(fault.Part) / part;
        var finds = past.Found.Where(f =>
            f.Part == fault.Part && f.Mode is not null && modes.ContainsKey((f.Part, f.Mode.Value))
        );
        var all = finds.Sum(f => f.Jobs);
        var same = finds.Where(f => f.Mode == fault.Mode).Sum(f => f.Jobs);
        return ofPart * ((TableFinds * mode) + same) / ((TableFinds + all) * mode);
    }

    /// <summary>Chance that the next job comes down to this part, 0 to 1; finds of parts that cannot be computed are left out.</summary>
    public double PartShare(string part)
    {
        var known = past.Found.Where(f => parts.ContainsKey(f.Part)).Sum(f => f.Jobs);
        return ((TableJobs * parts[part]) + past.Of(part)) / (TableJobs + known);
    }
}
