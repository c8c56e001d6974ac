using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Formations;

/// <summary>
/// A long-tailed pair: both halves side by side with their inputs outward, what stands over and under each in line with it, the tail in the
/// middle. Where two further parts share a control net (a current mirror) they turn it to each other.
/// </summary>
internal sealed class TwinMaker(Columns columns, ColumnMaker maker, Func<string, int> depth)
{
    /// <summary>Rows from the twins' shared ends to the tail's.</summary>
    private const int TailGap = 4;

    /// <summary>Everything that the pair takes; null when its columns are not apart.</summary>
    public IReadOnlyList<Upright>? PartsOf(Twins twins)
    {
        Upright[] parts = [.. columns.Of(twins.One), .. columns.Of(twins.Other), .. Tail(twins)];
        return parts.Distinct().Count() == parts.Length ? parts : null;
    }

    public IReadOnlyList<Member> Make(Twins twins, int width)
    {
        var (one, other) = (columns.Of(twins.One), columns.Of(twins.Other));
        var swap = Entry(one) > Entry(other);
        var (left, right) = swap ? (other, one) : (one, other);
        var (leftTwin, rightTwin) = swap ? (twins.Other, twins.One) : (twins.One, twins.Other);
        HashSet<string> shared = [.. left.Select(u => u.Control).OfType<string>()];
        shared.IntersectWith(right.Select(u => u.Control).OfType<string>());
        List<Member> members =
        [
            .. Levelled(left, leftTwin, twins.Hang, u => shared.Contains(u.Control ?? ""), 0),
            .. Levelled(right, rightTwin, twins.Hang, u => !shared.Contains(u.Control ?? ""), width),
        ];
        var down = twins.Hang ? -1 : 1;
        if (Tail(twins) is { Count: > 0 } tail)
        {
            members.AddRange(
                Levelled(tail, twins.Tail!, !twins.Hang, _ => false, width / 2).Select(m => m.Moved(new(0, down * TailGap)))
            );
        }

        if (twins.Wire is { } wire)
        {
            // Its first end looks to the left, where the tail hangs, or to the right when the other half is the left one.
            var first = wire.Pins[0].Net == twins.One.End(twins.Hang);
            members.Add(new(wire, new Pose(first != swap ? 3 : 1), new(swap ? width / 4 : width - (width / 4), down)));
        }

        return members;
    }

    private IReadOnlyList<Upright> Tail(Twins twins) => twins.Tail is null ? [] : columns.Of(twins.Tail);

    private int Entry(IReadOnlyList<Upright> column) => column.Min(u => u.Control is { } control ? depth(control) : int.MaxValue);

    /// <summary>With the given end of one part at row 0.</summary>
    private IEnumerable<Member> Levelled(IReadOnlyList<Upright> column, Upright on, bool top, Func<Upright, bool> faces, int x)
    {
        var members = maker.Stand(column, faces);
        var row = members.First(m => m.Symbol == on.Symbol).PinAt(ColumnMaker.PinOf(on, top)).Y;
        return members.Select(m => m.Moved(new(x, -row)));
    }
}
