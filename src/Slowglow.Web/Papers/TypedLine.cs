namespace Slowglow.Web.Papers;

using System.Globalization;
using Slowglow.Workshop.Pricing;

/// <summary>A line while it is being typed.</summary>
public sealed class TypedLine
{
    public LineKind Kind { get; set; } = LineKind.Labour;
    public string Text { get; set; } = "";
    public string Quantity { get; set; } = "1";
    public string Price { get; set; } = "";
    public string Tax { get; set; } = "";
    public string Weeks { get; set; } = "";

    public bool IsBlank => Text.Trim().Length == 0 && Price.Trim().Length == 0;

    public static TypedLine Of(ChargeLine line) =>
        new()
        {
            Kind = line.Kind,
            Text = line.Text,
            Quantity = line.Quantity.ToString("0.####", CultureInfo.InvariantCulture),
            Price = line.UnitPrice.ToString("0.00##", CultureInfo.InvariantCulture),
            Tax = line.Tax,
            Weeks = line.Weeks?.ToString(CultureInfo.InvariantCulture) ?? "",
        };
}
