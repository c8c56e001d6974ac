namespace Slowglow.Sheets.Parts.Fuse;

/// <summary>How quickly a fuse acts, as stamped on its cap.</summary>
public enum FuseSpeed
{
    /// <summary>The drawing does not say.</summary>
    Unsaid,

    /// <summary>F or FF.</summary>
    Quick,

    /// <summary>T or TT: time-lag, also called slow or anti-surge.</summary>
    TimeLag,
}
