using System.Globalization;
using Slowglow.Workshop.Accounts;

namespace Slowglow.Documents.Words;

/// <summary>Words as they stand on papers.</summary>
internal static class PaperWords
{
    /// <summary>"20 minutes", "1 hour", "2 hours 5 minutes".</summary>
    public static string Time(int minutes)
    {
        var (hours, rest) = (minutes / 60, minutes % 60);
        string Say(int count, string one) =>
            string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : "s")}");
        return hours == 0 ? Say(rest, "minute")
            : rest == 0 ? Say(hours, "hour")
            : $"{Say(hours, "hour")} {Say(rest, "minute")}";
    }

    public static string By(PaidBy by) => by.ToString().ToLowerInvariant();

    public static string For(PaidFor paidFor) =>
        paidFor switch
        {
            PaidFor.BenchFee => "bench fee",
            PaidFor.Deposit => "deposit",
            _ => "payment",
        };
}
