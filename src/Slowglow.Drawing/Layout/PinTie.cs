namespace Slowglow.Drawing.Layout;

/// <summary>How a pin joins its net.</summary>
internal enum PinTie
{
    /// <summary>By a wire in this strip.</summary>
    Wire,

    /// <summary>By a chassis sign of its own.</summary>
    Chassis,

    /// <summary>By a tag with the net's name.</summary>
    Tag,

    /// <summary>Straight up (or down) to the rail's line at the strip's edge.</summary>
    RailLine,

    /// <summary>It is the only one on its net.</summary>
    Alone,
}
