namespace Slowglow.Workshop.Jobs;

/// <summary>What an open job waits for.</summary>
public enum WaitsFor
{
    /// <summary>The shop's own hands.</summary>
    Us,

    /// <summary>An answer of the customer.</summary>
    Customer,

    Parts,

    /// <summary>Its owner coming for it.</summary>
    Collection,

    /// <summary>Gone home.</summary>
    Nothing,
}
