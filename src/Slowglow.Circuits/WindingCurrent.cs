namespace Slowglow.Circuits;

/// <summary>Current in a winding, or in the section of one that has taps.</summary>
/// <param name="Part">Designator of the transformer.</param>
/// <param name="Winding">Name of the winding.</param>
/// <param name="FromPin">Pin at the start of the section.</param>
/// <param name="ToPin">Pin at its end.</param>
/// <param name="AmpsRms">Rms over the mains cycle, direct current included.</param>
/// <param name="AmpsDc">Mean, from start to finish.</param>
/// <param name="RatedAmps">Rms rating of the winding; NaN when the sheet gives none.</param>
/// <param name="AmpsCrest">Largest instantaneous current of the cycle, either way.</param>
public sealed record WindingCurrent(
    string Part,
    string Winding,
    string FromPin,
    string ToPin,
    double AmpsRms,
    double AmpsDc,
    double RatedAmps,
    double AmpsCrest
);
