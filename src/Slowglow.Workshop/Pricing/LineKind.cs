namespace Slowglow.Workshop.Pricing;

/// <summary>What a line of a quote or an invoice charges for.</summary>
public enum LineKind
{
    Labour,
    Part,
    Freight,

    /// <summary>Done elsewhere: a rewind, a recone, a cabinet.</summary>
    OutsideWork,

    /// <summary>Bench fee and the like.</summary>
    Fee,

    /// <summary>For goods not collected.</summary>
    Storage,

    /// <summary>Taken off. Its price is typed as a positive figure.</summary>
    Discount,
}
