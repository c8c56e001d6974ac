namespace Slowglow.Circuits;

/// <summary>How a part leaves its working range when it is driven too far.</summary>
public enum ClippingKind
{
    /// <summary>A valve's grid goes positive and loads what drives it.</summary>
    GridCurrent,

    /// <summary>The part stops conducting for a part of the cycle.</summary>
    CutOff,

    /// <summary>A transistor is fully on, or a pentode's anode is down at its knee: its supply is used up.</summary>
    Bottomed,

    /// <summary>An op-amp's output reaches as near to its positive rail as it can.</summary>
    PositiveLimit,

    /// <summary>An op-amp's output reaches as near to its negative rail as it can.</summary>
    NegativeLimit,

    /// <summary>A diode across or in the signal conducts.</summary>
    Conducts,

    /// <summary>An op-amp or a regulator gives all the current that it can.</summary>
    CurrentLimit,

    /// <summary>An op-amp's output cannot follow as fast as it is asked to.</summary>
    Slews,

    /// <summary>Nothing leaves its range: the part's own curvature makes the distortion.</summary>
    Curvature,
}
