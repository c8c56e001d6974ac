namespace Slowglow.Workshop.LookingBack;

/// <summary>A month of jobs that went home in it.</summary>
/// <param name="Month">Its first day.</param>
/// <param name="Earned">Net less parts at cost, of jobs with hours entered.</param>
/// <param name="Hours">Worked on those.</param>
/// <param name="ChargedHours">Charged for those.</param>
/// <param name="WithoutHours">Jobs with no hours entered: they are left out of the figures.</param>
public sealed record MonthBack(DateOnly Month, int Jobs, decimal Earned, decimal Hours, decimal ChargedHours, int WithoutHours)
{
    /// <summary>What an hour on the bench brought in; null in a month without hours.</summary>
    public decimal? PerHour => Hours > 0 ? Earned / Hours : null;
}
