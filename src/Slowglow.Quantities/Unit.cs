namespace Slowglow.Quantities;

/// <summary>Units a drawing or a meter uses. Values are kept in base units (ohm, F, H, V, A, W, VA, Hz, fraction, minute).</summary>
public enum Unit
{
    /// <summary>The text says none: it is what the place asks for.</summary>
    None,
    Ohm,
    Farad,
    Henry,
    Volt,
    Ampere,
    Watt,
    VoltAmpere,
    Hertz,

    /// <summary>Written in percent, kept as a fraction: 6 % is 0.06.</summary>
    Percent,

    /// <summary>Bench time, kept in minutes.</summary>
    Minute,
}
