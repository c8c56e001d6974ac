using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis;

/// <summary>A reading worth taking.</summary>
/// <param name="Bits">Expected information about which part to replace, bits.</param>
/// <param name="Minutes">Cost with the change of setup and access, minutes (risk not included).</param>
/// <param name="Risk">"low", "live", "live HT" ...: what to be careful of, in the trade's words.</param>
/// <param name="Why">One sentence.</param>
/// <param name="Outcomes">What each outcome would mean, in a sentence each.</param>
public sealed record NextReading(
    Probe Probe,
    Setup Setup,
    double Bits,
    double Minutes,
    string Risk,
    string Why,
    IReadOnlyList<Outcome> Outcomes
);
