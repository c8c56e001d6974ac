using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Formations;

/// <summary>Stands the parts of a column over each other, their pins in one line.</summary>
/// <param name="gap">Rows between the pins that a net joins.</param>
internal sealed class ColumnMaker(Func<string, int> gap)
{
    /// <summary>The uppermost pin is at (0, 0).</summary>
    public IReadOnlyList<Member> Stand(IReadOnlyList<Upright> column, Func<Upright, bool> faces)
    {
        List<Member> members = [];
        var y = 0;
        foreach (var upright in column)
        {
            var member = At(upright, faces(upright), new(0, y), true);
            members.Add(member);
            y = member.PinAt(PinOf(upright, false)).Y + gap(upright.Bottom);
        }

        return members;
    }

    /// <summary>One part with its upper or lower pin at a cell.</summary>
    public static Member At(Upright upright, bool faces, Cell pin, bool upper)
    {
        var pose = upright.IsActive ? new Pose(0, faces, upright.IsTurned) : new Pose(upright.IsTurned ? 2 : 0);
        return new(upright.Symbol, pose, pin - pose.Apply(upright.Symbol.Pins[PinOf(upright, upper)].At));
    }

    public static int PinOf(Upright upright, bool upper) =>
        upper != upright.IsTurned ? 0
        : upright.IsActive ? 2
        : 1;
}
