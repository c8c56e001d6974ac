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
        Body = symbol.BodyIn(pose);
        (Labels, var labelRoom) = Layout.Labels.Of(symbol, pose);
        Attachments = [.. Pins.Where(p => p.Tie is PinTie.Chassis or PinTie.Tag).Select(Attach)];
        Rooms = [Body, .. labelRoom, .. Attachments.SelectMany(a => a.Room)];
        Outline = Rooms.Aggregate((a, b) => a.With(b)).With(Rect.Around([.. Pins.Select(p => p.At)]));
    }

    public Symbol Symbol { get; }
    public Pose Pose { get; }

    /// <summary>How little a drawing likes the pose.</summary>
    public double Penalty { get; }
    public IReadOnlyList<PlacedPin> Pins { get; }
    public Rect Body { get; }
    public IReadOnlyList<Label> Labels { get; }
    public IReadOnlyList<Attachment> Attachments { get; }

    /// <summary>Everything that nothing else may touch.</summary>
    public IReadOnlyList<Rect> Rooms { get; }
    public Rect Outline { get; }

    private static Attachment Attach(PlacedPin pin) =>
        pin.Tie == PinTie.Chassis ? Attachment.Chassis(pin.At, pin.Out) : Attachment.Tag(pin.At, pin.Out, pin.Net);
}
