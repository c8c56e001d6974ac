namespace Slowglow.Drawing;

/// <summary>How a measured figure stands to its band.</summary>
public enum ReadingMark
{
    InBand,
    High,
    Low,

    /// <summary>Next to nothing where there should be volts.</summary>
    Dead,
}
