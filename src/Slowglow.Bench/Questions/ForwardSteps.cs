namespace Slowglow.Bench.Questions;

/// <summary>The steps that lead on from an input, with feedback left out.</summary>
internal sealed class ForwardSteps
{
    private readonly string input;
    private List<SignalStep> kept;
    private ILookup<string, SignalStep> leaving;

    private ForwardSteps(IReadOnlyList<SignalStep> all, string input)
    {
        this.input = input;
        kept = [.. all];
        leaving = kept.ToLookup(s => s.From);
    }

    /// <summary>
    /// Leaves out passive parts that bridge a way through active ones: both ends get signal without the part, and one end drives the other.
    /// Feedback has one end near the input, so parts are judged from there on; what carries the signal to the output is then beyond doubt.
    /// </summary>
    public static IReadOnlyList<SignalStep> From(IReadOnlyList<SignalStep> all, string input)
    {
        var walk = new ForwardSteps(all, input);
        var distances = Distances(input, n => walk.leaving[n].Select(s => s.To));
        var passive = all.Where(s =>
                s.Kind == SignalStepKind.Passive && distances.ContainsKey(s.From) && distances.ContainsKey(s.To)
            )
            .GroupBy(s => s.Part)
            .OrderBy(g => g.Min(s => distances[s.From]))
            .ThenByDescending(g => g.Max(s => distances[s.From]))
            .Select(g => g.Key);
        foreach (var part in passive.ToArray())
        {
            walk.DropIfBridge(part);
        }
        return walk.kept;
    }

    /// <summary>Steps from a net to every net that is reached from it.</summary>
    public static Dictionary<string, int> Distances(string start, Func<string, IEnumerable<string>> next)
    {
        Dictionary<string, int> distances = new() { [start] = 0 };
        Queue<string> queue = new([start]);
        while (queue.TryDequeue(out var net))
        {
            foreach (var reached in next(net))
            {
                if (distances.TryAdd(reached, distances[net] + 1))
                {
                    queue.Enqueue(reached);
                }
            }
        }
        return distances;
    }

    private void DropIfBridge(string part)
    {
        var ends = kept.Where(s => s.Part == part).ToArray();
        var without = Distances(input, n => leaving[n].Where(s => s.Part != part).Select(s => s.To));
        if (ends.All(s => without.ContainsKey(s.From) && without.ContainsKey(s.To)) && ends.Any(s => Drives(s.From, s.To, part)))
        {
            kept = [.. kept.Where(s => s.Part != part)];
            leaving = kept.ToLookup(s => s.From);
        }
    }

    /// <summary>True when a way that passes an active part leads from one net to the other, touching neither in between.</summary>
    private bool Drives(string from, string to, string withoutPart)
    {
        HashSet<(string Net, bool Active)> seen = [(from, false)];
        Queue<(string Net, bool Active)> queue = new(seen);
        while (queue.TryDequeue(out var at))
        {
            foreach (var step in leaving[at.Net].Where(s => s.Part != withoutPart && s.To != from))
            {
                var active = at.Active || step.Kind == SignalStepKind.Active;
                if (step.To == to)
                {
                    if (active)
                    {
                        return true;
                    }
                }
                else if (seen.Add((step.To, active)))
                {
                    queue.Enqueue((step.To, active));
                }
            }
        }
        return false;
    }
}
