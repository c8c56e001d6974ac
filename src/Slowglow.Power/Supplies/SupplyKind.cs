namespace Slowglow.Power.Supplies;

/// <summary>How a unit gets its volts from the mains.</summary>
public enum SupplyKind
{
    /// <summary>A mains transformer at mains frequency.</summary>
    Transformer,

    /// <summary>The mains is rectified, and a switch drives a transformer at a high frequency.</summary>
    SwitchedMode,

    /// <summary>Chassis or rails hang on the mains without a transformer between.</summary>
    Transformerless,

    /// <summary>The sheet draws no mains inlet.</summary>
    NoMains,
}
