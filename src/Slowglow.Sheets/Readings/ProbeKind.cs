namespace Slowglow.Sheets.Readings;

public enum ProbeKind
{
    /// <summary>Volts, mean.</summary>
    Dc,

    /// <summary>Volts rms with the DC blocked; "ripple" on a rail. At MAINS: inlet amperes rms.</summary>
    Ac,

    /// <summary>Ohms with the power off.</summary>
    Ohm,

    /// <summary>Volts at the meter's diode test.</summary>
    Diode,

    /// <summary>Volts rms at a frequency, with the sheet's input level applied.</summary>
    Level,

    /// <summary>No meter at all: how a part looks, smells or feels.</summary>
    Look,
}
