namespace Slowglow.Drawing.Symbols;

/// <summary>How a symbol may be placed.</summary>
internal enum Turning
{
    /// <summary>As it is.</summary>
    Fixed,

    /// <summary>As it is or mirrored left to right.</summary>
    Mirror,

    /// <summary>Mirrored either way, never lying.</summary>
    Flip,

    /// <summary>Standing or lying, either end first.</summary>
    Quarter,
}
