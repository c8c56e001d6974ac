using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Symbols;

/// <summary>A net's name on a tag: the wire goes on at every other tag of that name.</summary>
internal sealed class TagSymbol : Symbol
{
    public TagSymbol(string net)
        : base(null, net, [])
    {
        Words = [];
        Length = TextSize.Cells(net) + 1;
        Pins = [new(net, net, new(0, 0), Heading.Left)];
        Body = new(1, 0, Length, 0);
        Turning = Turning.Quarter;
        Net = net;
    }

    public string Net { get; }

    /// <summary>Grid units from the pin to the tag's end.</summary>
    public int Length { get; }

    /// <summary>The words stay level when the tag hangs below or stands above its pin.</summary>
    public override Rect BodyIn(Pose pose)
    {
        var half = (Length + 1) / 2;
        return pose.Quarters switch
        {
            1 => new(-half, 1, half, 2),
            3 => new(-half, -2, half, -1),
            _ => pose.Apply(Body),
        };
    }
}
