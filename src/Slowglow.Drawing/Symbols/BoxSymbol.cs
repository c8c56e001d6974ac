using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>A plain box with its pins on both sides: supply pins of a chip, and whatever has no symbol of its own.</summary>
internal sealed class BoxSymbol : Symbol
{
    public BoxSymbol(Part part, IReadOnlyList<Pin> pins, string words)
        : base(part, part.Designator, [words])
    {
        var rows = (pins.Count + 1) / 2;
        Pins = [.. pins.Select((p, i) => Of(p, i < rows, i % rows))];
        var bottom = (2 * rows) - 1;
        Body = new(-3, -1, 3, bottom);
        Turning = Turning.Mirror;
        Label = LabelSide.Above;
        Strokes =
        [
            Line.Box(-3, -1, 3, bottom),
            .. Pins.Select(p => Line.Of((p.At.X, p.At.Y), (0.75 * p.At.X, p.At.Y))),
            .. Pins.Zip(pins).Select(z => Inside(z.First, z.Second.Electrode)),
        ];
    }

    /// <summary>A chip's supply: plus on top, minus below.</summary>
    public static BoxSymbol Supply(Part part, Pin plus, Pin minus) => new(part, plus, minus);

    private BoxSymbol(Part part, Pin plus, Pin minus)
        : base(part, part.Designator, ["supply"])
    {
        Pins =
        [
            new($"{part.Designator}.{plus.Number}", plus.Net, new(0, -2), Heading.Up, plus.Number),
            new($"{part.Designator}.{minus.Number}", minus.Net, new(0, 2), Heading.Down, minus.Number),
        ];
        Body = new(-1, -1, 1, 1);
        Turning = Turning.Fixed;
        IsChipSupply = true;
        Strokes =
        [
            Line.Box(-1, -1, 1, 1),
            Line.Of((0, -2), (0, -1)),
            Line.Of((0, 1), (0, 2)),
            Line.Of((-0.3, -0.5), (0.3, -0.5)),
            Line.Of((0, -0.8), (0, -0.2)),
            Line.Of((-0.3, 0.5), (0.3, 0.5)),
        ];
    }

    /// <summary>The supply pins of a chip: they get tags, since wires to every chip would only clutter.</summary>
    public bool IsChipSupply { get; }

    private SymbolPin Of(Pin pin, bool left, int row) =>
        new(
            $"{Part!.Designator}.{pin.Number}",
            pin.Net,
            new(left ? -4 : 4, 2 * row),
            left ? Heading.Left : Heading.Right,
            pin.Number
        );

    private static Writing Inside(SymbolPin pin, string electrode) =>
        new(pin.At.X < 0 ? -1.6 : 1.6, pin.At.Y + 0.35, electrode, "inside");
}
