namespace Slowglow.Cli.Json;

/// <summary>What a winding does in the unit as drawn; <c>rated</c> is null where the sheet gives none.</summary>
internal sealed record RewindDutyJson(
    string Name,
    double OffLoadVolts,
    double LoadedVolts,
    double Rms,
    double Dc,
    double Crest,
    double VoltAmperes,
    double Rated
);
