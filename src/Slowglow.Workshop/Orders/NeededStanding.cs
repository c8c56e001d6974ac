using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.Orders;

/// <summary>A part that a job needs, and how far it has come.</summary>
/// <param name="Sequence">Its entry in the timeline.</param>
/// <param name="Fitted">Pieces of it that are in.</param>
/// <param name="Came">Pieces that were delivered.</param>
/// <param name="Ordered">Pieces that were ordered.</param>
public sealed record NeededStanding(int Sequence, NeededPart Part, int Fitted, int Came, int Ordered)
{
    public bool IsFitted => Fitted >= Part.Quantity;

    public bool IsOrdered => Math.Max(Ordered, Fitted) >= Part.Quantity;

    /// <summary>"fitted", "here", "on its way", "not ordered yet".</summary>
    public string Words =>
        IsFitted ? "fitted"
        : Came >= Part.Quantity ? "here"
        : IsOrdered ? "on its way"
        : "not ordered yet";

    /// <summary>Every part needed, in the order in which they were typed. The same part needed twice wants both its quantities.</summary>
    public static IReadOnlyList<NeededStanding> Of(
        IEnumerable<(int Sequence, NeededPart Part)> needed,
        IReadOnlyList<FittedPart> fitted,
        IReadOnlyList<OpenOrder> orders
    )
    {
        var lines = orders.SelectMany(o => o.Order.Lines.Zip(o.Came)).ToList();
        var (isIn, came, ordered) = (
            Pool(fitted.Select(f => (f.Part, f.Quantity))),
            Pool(lines.Select(l => (l.First.Part, l.Second))),
            Pool(lines.Select(l => (l.First.Part, l.First.Quantity)))
        );
        return
        [
            .. needed.Select(n => new NeededStanding(
                n.Sequence,
                n.Part,
                Draw(isIn, n.Part),
                Draw(came, n.Part),
                Draw(ordered, n.Part)
            )),
        ];
    }

    private static Dictionary<string, int> Pool(IEnumerable<(string Part, int Quantity)> pieces) =>
        pieces.GroupBy(p => BoardCard.Key(p.Part)).ToDictionary(g => g.Key, g => g.Sum(p => p.Quantity));

    private static int Draw(Dictionary<string, int> pool, NeededPart wanted)
    {
        var key = BoardCard.Key(wanted.Part);
        var taken = Math.Min(wanted.Quantity, pool.GetValueOrDefault(key));
        pool[key] = pool.GetValueOrDefault(key) - taken;
        return taken;
    }
}
