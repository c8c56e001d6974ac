namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>One winding, possibly tapped. Pins run from start to finish.</summary>
/// <param name="Name">As in the sheet.</param>
/// <param name="Pins">Pin numbers from start to finish; taps between.</param>
/// <param name="SectionVolts">
/// Open-circuit volts rms of each section between neighbouring pins (length = pins - 1). For an output transformer: relative turns.
/// Rated volts of a loaded winding are raised here by the assumed regulation.
/// </param>
/// <param name="SectionOhms">Copper of each section, ohms, &gt; 0.</param>
/// <param name="RatedAmps">NaN when not given.</param>
/// <param name="IsPrimary">First winding, or a name that begins with P.</param>
public sealed record Winding(
    string Name,
    IReadOnlyList<string> Pins,
    IReadOnlyList<double> SectionVolts,
    IReadOnlyList<double> SectionOhms,
    double RatedAmps,
    bool IsPrimary
);
