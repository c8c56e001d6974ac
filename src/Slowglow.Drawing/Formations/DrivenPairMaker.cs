using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>Drivers left, output devices right, each driver's emitter level with the base that it drives.</summary>
internal sealed class DrivenPairMaker(ColumnMaker maker, Func<string, int> gap)
{
    public IReadOnlyList<Member> Make(DrivenPair pair, int width)
    {
        var outputs = maker.Stand(pair.Outputs, _ => false).Select(m => m.Moved(new(width, 0))).ToArray();
        var bases = outputs.Where(m => m.Symbol is ActiveSymbol).Select(m => m.PinAt(1)).ToArray();
        var (upper, lower) = (bases[0].Y, bases[1].Y);
        var at = pair.Drivers.ToList().IndexOf(pair.Between);
        List<Member> members = [.. outputs];
        var y = upper - 1;
        foreach (var upright in pair.Drivers.Take(at).Reverse())
        {
            members.Add(ColumnMaker.At(upright, false, new(0, y), false));
            y = members[^1].PinAt(ColumnMaker.PinOf(upright, true)).Y - gap(upright.Top);
        }

        y = lower + 1;
        foreach (var upright in pair.Drivers.Skip(at + 1))
        {
            members.Add(ColumnMaker.At(upright, false, new(0, y), true));
            y = members[^1].PinAt(ColumnMaker.PinOf(upright, false)).Y + gap(upright.Bottom);
        }

        members.Add(ColumnMaker.At(pair.Between, false, new(0, ((upper + lower) / 2) - 2), true));
        AddStopper(members, pair.UpperStopper, pair.Outputs.First(u => u.IsActive), bases[0]);
        AddStopper(members, pair.LowerStopper, pair.Outputs.Last(u => u.IsActive), bases[1]);
        return members;
    }

    private static void AddStopper(List<Member> members, ResistorSymbol? stopper, Upright driven, Cell control)
    {
        if (stopper is not null)
        {
            var firstIsFar = stopper.Pins[0].Net != driven.Control;
            members.Add(new(stopper, new Pose(firstIsFar ? 3 : 1), new(control.X / 2, control.Y)));
        }
    }
}
