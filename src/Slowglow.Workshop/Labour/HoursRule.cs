namespace Slowglow.Workshop.Labour;

/// <summary>How worked minutes become charged ones.</summary>
/// <param name="Step">Charged in steps of so many minutes, begun steps count; 1 to 60.</param>
/// <param name="Least">Least charged for a job with any work in it, minutes.</param>
public sealed record HoursRule(int Step, int Least)
{
    /// <summary>Minutes charged for a piece of work; nothing for nothing.</summary>
    public int Charge(int minutes) => minutes <= 0 ? 0 : Math.Max(Least, (minutes + Step - 1) / Step * Step);

    /// <summary>Hours with two decimals, as they stand on a line.</summary>
    public static decimal Hours(int minutes) => decimal.Round(minutes / 60m, 2, MidpointRounding.AwayFromZero);
}
