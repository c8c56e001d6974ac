namespace Slowglow.Circuits;

/// <summary>Where noise comes from.</summary>
public enum NoiseKind
{
    /// <summary>Thermal noise of a resistance (windings, loudspeaker and the generator's own resistance included).</summary>
    Thermal,

    /// <summary>Shot noise of a valve or junction, or the channel noise of a field-effect transistor.</summary>
    Shot,

    /// <summary>Input noise of an op-amp.</summary>
    OpAmp,
}
