using Slowglow.Drawing.Formations;
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
    }

    /// <summary>A formation, whose members do not move against each other.</summary>
    public Stance(Formation formation, IReadOnlyList<Placed> members)
    {
        Symbol = formation;
        Pose = new Pose();
        Members = members;
        Penalty = members.Sum(m => m.Stance.Penalty);
        Pins = [.. members.SelectMany(m => m.Pins)];
        Bodies = [.. members.SelectMany(m => m.Stance.Bodies.Select(b => b.Moved(m.Origin)))];
        Labels = [.. members.SelectMany(m => m.Labels)];
        Attachments = [.. members.SelectMany(m => m.Attachments)];
        Rooms = [.. members.SelectMany(m => m.Rooms)];
        Outline = members.Select(m => m.Outline).Aggregate((a, b) => a.With(b));
    }

    public Symbol Symbol { get; }
    public Pose Pose { get; }

    /// <summary>How little a drawing likes the pose.</summary>
    public double Penalty { get; }
    public IReadOnlyList<PlacedPin> Pins { get; }
    public IReadOnlyList<Rect> Bodies { get; }

    /// <summary>What a formation consists of, about the formation's origin; empty for a symbol by itself.</summary>
    public IReadOnlyList<Placed> Members { get; } = [];
    public IReadOnlyList<Label> Labels { get; }
    public IReadOnlyList<Attachment> Attachments { get; }

    /// <summary>Everything that nothing else may touch.</summary>
    public IReadOnlyList<Rect> Rooms { get; }
    public Rect Outline { get; }

    /// <summary>Pins to bring near their nets: of a formation's pins on one net the nearest counts.</summary>
    public IEnumerable<IEnumerable<PlacedPin>> Ends
    {
        get
        {
            var wired = Pins.Where(p => p.Tie == PinTie.Wire);
            return Members.Count == 0 ? wired.Select(p => new[] { p }) : wired.GroupBy(p => p.Net);
        }
    }

    private static Attachment Attach(PlacedPin pin) =>
        pin.Tie == PinTie.Chassis ? Attachment.Chassis(pin.At, pin.Out) : Attachment.Tag(pin.At, pin.Out, pin.Net);
}
