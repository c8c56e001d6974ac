using System.Globalization;
using Slowglow.Workshop.Accounts;

namespace Slowglow.Documents.Words;

/// <summary>Figures and days as they stand on papers.</summary>
internal static class PaperWords
{
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    public static string Figure(decimal figure) => figure.ToString("#,##0.00#", CultureInfo.InvariantCulture);

    public static string Quantity(decimal figure) => figure.ToString("0.##", CultureInfo.InvariantCulture);

    public static string Percent(decimal percent) => percent.ToString("0.##", CultureInfo.InvariantCulture) + " %";

    public static string By(PaidBy by) => by.ToString().ToLowerInvariant();

    public static string For(PaidFor paidFor) =>
        paidFor switch
        {
            PaidFor.BenchFee => "bench fee",
            PaidFor.Deposit => "deposit",
            _ => "payment",
        };
}
