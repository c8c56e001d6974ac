using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>A chassis sign or a tag that sits right at a pin, relative to the pin.</summary>
/// <param name="Tie">Chassis or Tag.</param>
/// <param name="Net">Name on the tag.</param>
/// <param name="Lead">From the pin to the sign, corner by corner.</param>
/// <param name="Room">Crossings that it takes up, the pin's own not among them.</param>
internal sealed record Attachment(PinTie Tie, string Net, Heading Heading, IReadOnlyList<Cell> Lead, IReadOnlyList<Rect> Room)
{
    public static Attachment Chassis(Cell pin, Heading heading)
    {
        Cell[] lead = heading switch
        {
            Heading.Down => [pin, pin + new Cell(0, 1)],
            Heading.Right => [pin, pin + new Cell(2, 0), pin + new Cell(2, 1)],
            Heading.Left => [pin, pin + new Cell(-2, 0), pin + new Cell(-2, 1)],
            _ => [pin, pin + new Cell(0, -2), pin + new Cell(3, -2), pin + new Cell(3, -1)],
        };
        Rect[] room = heading switch
        {
            Heading.Down => [new(-1, 1, 1, 2)],
            Heading.Right => [new(1, 0, 3, 2)],
            Heading.Left => [new(-3, 0, -1, 2)],
            _ => [new(0, -2, 1, -1), new(2, -2, 4, 0)],
        };
        return new(PinTie.Chassis, "", heading, lead, [.. room.Select(r => r.Moved(pin))]);
    }

    public static Attachment Tag(Cell pin, Heading heading, string net)
    {
        var length = TextSize.Cells(net) + 1;
        var half = (length + 1) / 2;
        Rect room = heading switch
        {
            Heading.Right => new(1, 0, length + 1, 0),
            Heading.Left => new(-length - 1, 0, -1, 0),
            Heading.Up => new(-half, -2, half, -1),
            _ => new(-half, 1, half, 2),
        };
        return new(PinTie.Tag, net, heading, [pin, pin + heading.Step()], [room.Moved(pin)]);
    }

    public Attachment Moved(Cell by) =>
        this with
        {
            Lead = [.. Lead.Select(c => c + by)],
            Room = [.. Room.Select(r => r.Moved(by))],
        };
}
