using System.Globalization;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Says what past jobs know of a part.</summary>
internal static class HistoryWords
{
    /// <summary>"found in 2 of 5 past jobs"; empty when there is no history or it never was this part.</summary>
    public static string Of(PastJobs? past, string part)
    {
        if (past?.Of(part) is not (> 0 and var times))
        {
            return "";
        }

        var all = past.Jobs.ToString(CultureInfo.InvariantCulture);
        return past.Jobs == 1
            ? "found in the 1 past job on this sheet"
            : $"found in {times.ToString(CultureInfo.InvariantCulture)} of {all} past jobs on this sheet";
    }
}
