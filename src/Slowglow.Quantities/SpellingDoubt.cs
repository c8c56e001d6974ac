namespace Slowglow.Quantities;

/// <summary>Spellings that can be read in two ways.</summary>
public enum SpellingDoubt
{
    None,

    /// <summary><c>mf</c> or <c>MF</c>: microfarads on old drawings, and read so.</summary>
    OldMicrofarad,

    /// <summary><c>mF</c>: millifarads today, microfarads on old drawings; read as millifarads.</summary>
    Millifarad,

    /// <summary><c>4,700</c>: read as four thousand seven hundred.</summary>
    ThousandsComma,
}
