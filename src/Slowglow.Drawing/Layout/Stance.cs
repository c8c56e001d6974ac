using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>A symbol in one pose with everything that clings to it, about its own origin.</summary>
internal sealed class Stance
{
    public Stance(Symbol symbol, Pose pose, IReadOnlyList<PinTie> ties, double penalty)
    {
        Symbol = symbol;
        Pose = pose;
        Penalty = penalty;
        Pins = [.. symbol.Pins.Select((p, i) => new PlacedPin(p, pose.Apply(p.At), pose.Apply(p.Out), ties[i]))];
        Bodies = [symbol.BodyIn(pose)];
        (Labels, var labelRoom) = Layout.Labels.Of(symbol, pose);
        Attachments = [.. Pins.Where(p => p.Tie is PinTie.Chassis or PinTie.Tag).Select(Attach)];
        Rooms = [.. Bodies, .. labelRoom, .. Attachments.SelectMany(a => a.Room)];
        Outline = Rooms.Aggregate((a, b) => a.With(b)).With(Rect.Around([.. Pins.Select(p => p.At)]));
        Ends = EndsOf(Pins, areOfOneSymbol: true);
    }

    /// <summary>Symbols that are placed as one and do not move against each other.</summary>
    /// <param name="symbol">Stands for them all.</param>
    /// <param name="members">About the origin of <paramref name="symbol"/>.</param>
    public Stance(Symbol symbol, IReadOnlyList<Placed> members)
    {
        Symbol = symbol;
        Pose = new Pose();
        Members = members;
        Penalty = members.Sum(m => m.Stance.Penalty);
        Pins = [.. members.SelectMany(m => m.Pins)];
        Bodies = [.. members.SelectMany(m => m.Stance.Bodies.Select(b => b.Moved(m.Origin)))];
        Labels = [.. members.SelectMany(m => m.Labels)];
        Attachments = [.. members.SelectMany(m => m.Attachments)];
        Rooms = [.. members.SelectMany(m => m.Rooms)];
        Outline = members.Select(m => m.Outline).Aggregate((a, b) => a.With(b));
        Ends = EndsOf(Pins, areOfOneSymbol: false);
    }

    public Symbol Symbol { get; }
    public Pose Pose { get; }

    /// <summary>How little a drawing likes the pose.</summary>
    public double Penalty { get; }
    public IReadOnlyList<PlacedPin> Pins { get; }
    public IReadOnlyList<Rect> Bodies { get; }

    /// <summary>What is placed as one with this symbol's name, about its origin; empty for a symbol by itself.</summary>
    public IReadOnlyList<Placed> Members { get; } = [];
    public IReadOnlyList<Label> Labels { get; }
    public IReadOnlyList<Attachment> Attachments { get; }

    /// <summary>Everything that nothing else may touch.</summary>
    public IReadOnlyList<Rect> Rooms { get; }
    public Rect Outline { get; }

    /// <summary>Pins to bring near their nets: of members' pins on one net the nearest counts.</summary>
    public IReadOnlyList<PlacedPin[]> Ends { get; }

    private static PlacedPin[][] EndsOf(IEnumerable<PlacedPin> pins, bool areOfOneSymbol)
    {
        var wired = pins.Where(p => p.Tie == PinTie.Wire);
        return areOfOneSymbol ? [.. wired.Select(p => new[] { p })] : [.. wired.GroupBy(p => p.Net).Select(g => g.ToArray())];
    }

    private static Attachment Attach(PlacedPin pin) =>
        pin.Tie == PinTie.Chassis ? Attachment.Chassis(pin.At, pin.Out) : Attachment.Tag(pin.At, pin.Out, pin.Net);
}
