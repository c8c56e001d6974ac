namespace Slowglow.Web.Bench;

/// <summary>How large the drawing stands on the page.</summary>
internal enum DrawingSize
{
    /// <summary>All of it at once.</summary>
    Whole,

    /// <summary>To be read sitting before it.</summary>
    Sitting,

    /// <summary>To be read standing, with a probe in the hand.</summary>
    Standing,
}
