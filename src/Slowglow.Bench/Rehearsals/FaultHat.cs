using Slowglow.Circuits;
using Slowglow.Diagnosis;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// The hat that faults are drawn from. Severities of soft faults lie off the program's own grid. Nothing is said of whether the fault can be heard.
/// </summary>
internal sealed class FaultHat
{
    /// <summary>Soft severities move by up to a third either way.</summary>
    private const double OffGrid = 0.35;

    private readonly IReadOnlyList<Story> stories;
    private readonly double[] upTo;
    private readonly IReadOnlyList<IReadOnlyList<IReadOnlyList<Story>>> byPart;
    private readonly Random random;

    public FaultHat(IReadOnlyList<Story> stories, Random random)
    {
        (this.stories, this.random) = (stories, random);
        upTo = new double[stories.Count];
        double sum = 0;
        for (var i = 0; i < upTo.Length; i++)
        {
            upTo[i] = sum += stories[i].Prior;
        }
        byPart =
        [
            .. stories
                .GroupBy(s => s.Faults[0].Part)
                .Select(part => part.GroupBy(s => s.Faults[0]).Select(fault => fault.ToList()).ToList()),
        ];
    }

    /// <summary>The cause, and the fuse it blew, if any.</summary>
    public IReadOnlyList<Fault> Draw(FaultDraw draw) =>
        [.. (draw == FaultDraw.Priors ? ByPriors() : Evenly()).Faults.Select(Between)];

    private Story ByPriors()
    {
        var at = Array.BinarySearch(upTo, random.NextDouble() * upTo[^1]);
        return stories[Math.Min(at < 0 ? ~at : at, stories.Count - 1)];
    }

    /// <summary>A part, then one of its faults, then whether it blew its fuse.</summary>
    private Story Evenly()
    {
        var variants = random.Pick(random.Pick(byPart));
        var place = random.NextDouble() * variants.Sum(v => v.Prior);
        return variants.SkipWhile(v => (place -= v.Prior) > 0).FirstOrDefault() ?? variants[^1];
    }

    private Fault Between(Fault fault)
    {
        if (fault.Severity <= 0)
        {
            return fault;
        }
        var moved = fault.Severity * Math.Exp(OffGrid * (2 * random.NextDouble() - 1));
        var most = fault.Mode is FailureMode.LowEmission or FailureMode.DriedOut ? 0.95 : double.PositiveInfinity;
        var sameSide = fault.Mode != FailureMode.Drifted || moved > 1 == fault.Severity > 1;
        return sameSide ? fault with { Severity = Math.Min(moved, most) } : fault;
    }
}
