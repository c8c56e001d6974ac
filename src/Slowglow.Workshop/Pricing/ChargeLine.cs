namespace Slowglow.Workshop.Pricing;

/// <summary>A line as it was agreed, before tax is worked out.</summary>
/// <param name="Quantity">Hours for labour, pieces otherwise; above 0.</param>
/// <param name="UnitPrice">In the currency of the paper; at least 0, also for a discount.</param>
/// <param name="Tax">Name of a rate in the shop's table: "standard", "reduced", "none".</param>
/// <param name="Weeks">How long outside work or a part takes; null when nothing has to be waited for.</param>
public sealed record ChargeLine(LineKind Kind, string Text, decimal Quantity, decimal UnitPrice, string Tax, int? Weeks = null)
{
    /// <summary>Before rounding; below 0 for a discount.</summary>
    public decimal Exact => Kind == LineKind.Discount ? -Quantity * UnitPrice : Quantity * UnitPrice;
}
