using System.Globalization;
using Slowglow.Workshop.Money;

namespace Slowglow.Web.Papers;

/// <summary>Money as it stands on the page.</summary>
public static class Money
{
    public static string Figure(decimal figure) => figure.ToString("#,##0.00#", CultureInfo.InvariantCulture);

    public static string Quantity(decimal figure) => figure.ToString("0.##", CultureInfo.InvariantCulture);

    public static string Say(Amount amount) => $"{Figure(amount.Figure)} {amount.Currency}";
}
