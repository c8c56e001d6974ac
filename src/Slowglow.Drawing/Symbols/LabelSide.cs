namespace Slowglow.Drawing.Symbols;

/// <summary>Where a symbol's words stand when it is upright.</summary>
internal enum LabelSide
{
    /// <summary>To the right of the body; to the left when mirrored.</summary>
    Beside,

    /// <summary>To the left of the body, where a wiper takes the right; the other way when mirrored.</summary>
    Behind,

    /// <summary>Over the body.</summary>
    Above,

    /// <summary>Under the body's right half, clear of it.</summary>
    Corner,
}
