namespace Slowglow.Power.Rewinding;

/// <summary>What a winding does in the circuit as it stands.</summary>
/// <param name="Name">Of the winding.</param>
/// <param name="IsPrimary">Fed from the mains.</param>
/// <param name="OffLoadVolts">Rms, nothing drawn, end to end.</param>
/// <param name="LoadedVolts">Rms in the world, end to end.</param>
/// <param name="AmpsRms">Of its busiest section.</param>
/// <param name="AmpsDc">Mean, of that section.</param>
/// <param name="AmpsCrest">Largest instantaneous.</param>
/// <param name="RatedAmps">On the drawing; NaN when it says none.</param>
/// <param name="ColdOhms">End to end.</param>
public sealed record WindingDuty(
    string Name,
    bool IsPrimary,
    double OffLoadVolts,
    double LoadedVolts,
    double AmpsRms,
    double AmpsDc,
    double AmpsCrest,
    double RatedAmps,
    double ColdOhms
)
{
    /// <summary>Amperes that wire is chosen for: the drawing's where they are more than the world's.</summary>
    public double DesignAmps => double.IsNaN(RatedAmps) ? AmpsRms : Math.Max(RatedAmps, AmpsRms);

    public double VoltAmperes => LoadedVolts * AmpsRms;
}
