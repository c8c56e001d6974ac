namespace Slowglow.Circuits;

/// <summary>A part that limits the clean output of a channel.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Element">"V1 section 2", "U3 section 1", "Q7".</param>
/// <param name="Kind">How it leaves its range.</param>
/// <param name="GeneratorVolts">Generator level at which it does, volts rms (found to about 6 %).</param>
/// <param name="OutputVolts">Fundamental at the output there, volts rms.</param>
/// <param name="Words">A sentence of the trade: "V2 section 1 draws grid current".</param>
public sealed record ClippingCause(
    string Part,
    string Element,
    ClippingKind Kind,
    double GeneratorVolts,
    double OutputVolts,
    string Words
);
