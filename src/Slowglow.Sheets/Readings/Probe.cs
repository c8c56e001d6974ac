namespace Slowglow.Sheets.Readings;

/// <summary>A question to a world: where and what kind. "Across a part" is red on its pin 1, black on its pin 2.</summary>
/// <param name="Where">As a person writes it: "V1.6", "T1.3 - T1.4", "R5", "MAINS".</param>
/// <param name="Red">Canonical net under the red lead; "MAINS" for the inlet current.</param>
/// <param name="Black">Canonical net under the black lead; GND unless said otherwise.</param>
/// <param name="Kind">What is asked.</param>
/// <param name="Frequency">Hertz for a level, otherwise 0.</param>
/// <param name="SaidAsRipple">The technician called it ripple: same reading as ac.</param>
public sealed record Probe(
    string Where,
    string Red,
    string Black,
    ProbeKind Kind,
    double Frequency = 0,
    bool SaidAsRipple = false
)
{
    public const string Inlet = "MAINS";
    public bool IsInlet => Red == Inlet;

    /// <summary>Unit of the answer: "V", "A" or "ohm"; empty for a look.</summary>
    public string Unit =>
        IsInlet ? "A"
        : Kind == ProbeKind.Ohm ? "ohm"
        : Kind == ProbeKind.Look ? ""
        : "V";

    /// <summary>"dc", "ac", "ripple", "ohm", "diode", "look" or a frequency such as "1kHz", as in readings and JSON.</summary>
    public string KindText =>
        Kind switch
        {
            ProbeKind.Dc => "dc",
            ProbeKind.Ac => SaidAsRipple ? "ripple" : "ac",
            ProbeKind.Ohm => "ohm",
            ProbeKind.Diode => "diode",
            ProbeKind.Look => "look",
            _ => Quantities.Engineering.Format(Frequency, "Hz", 6).Replace(" ", "", StringComparison.Ordinal),
        };
}
