using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Setups;

namespace Slowglow.Trials;

/// <summary>
/// Picks the faults to hide: a part at random, then one of its faults, with severities that lie between those of the program's own grid;
/// only faults that make a complaint. A fault that drives a fuse past twice its rating is hidden together with the blown fuse.
/// </summary>
internal sealed class FaultPicker(Worlds worlds, ComplaintWriter writer, Random random)
{
    private const double BlowingRatio = 2;
    private const double OffGrid = 0.35;

    private readonly HashSet<string> fuses = [.. worlds.Circuit.Sheet.Parts.OfType<FusePart>().Select(f => f.Designator)];

    public IEnumerable<(IReadOnlyList<Fault> Faults, string Complaint)> Pick(int count)
    {
        var byPart = worlds.Circuit.Faults.GroupBy(f => f.Part).Select(g => new Queue<Fault>(Shuffle([.. g]))).ToList();
        var picked = 0;
        while (picked < count && byPart.Any(q => q.Count > 0))
        {
            foreach (var queue in Shuffle([.. byPart.Where(q => q.Count > 0)]))
            {
                if (picked < count && FirstWithComplaint(queue) is { } found)
                {
                    picked++;
                    yield return found;
                }
            }
        }
    }

    private (IReadOnlyList<Fault>, string)? FirstWithComplaint(Queue<Fault> queue)
    {
        while (queue.TryDequeue(out var fault))
        {
            var hidden = WithFuse(Between(fault));
            if (writer.Of(hidden) is { } complaint)
            {
                return (hidden, complaint);
            }
        }
        return null;
    }

    private Fault Between(Fault fault)
    {
        if (!SeverityLadder.IsSoft(fault))
        {
            return fault;
        }
        var moved = fault.Severity * Math.Exp(OffGrid * (2 * random.NextDouble() - 1));
        var sameSide = fault.Mode != FailureMode.Drifted || moved > 1 == fault.Severity > 1;
        return sameSide ? fault with { Severity = moved } : fault;
    }

    private IReadOnlyList<Fault> WithFuse(Fault fault)
    {
        if (fault.Mode == FailureMode.Open || fuses.Contains(fault.Part))
        {
            return [fault];
        }
        var worst = worlds
            .Stress(Setup.Default, [fault])
            .Where(s => fuses.Contains(s.Part) && s.AmpsRatio > BlowingRatio)
            .MaxBy(s => s.AmpsRatio);
        return worst is null ? [fault] : [fault, new Fault(worst.Part, "", FailureMode.Open)];
    }

    private T[] Shuffle<T>(T[] items)
    {
        random.Shuffle(items);
        return items;
    }
}
