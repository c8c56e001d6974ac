namespace Slowglow.Workshop.Pricing;

/// <summary>Says a kind of line as it stands on paper.</summary>
public static class LineKindWords
{
    public static string Say(LineKind kind) =>
        kind switch
        {
            LineKind.Labour => "labour",
            LineKind.Part => "part",
            LineKind.Freight => "freight",
            LineKind.OutsideWork => "outside work",
            LineKind.Fee => "fee",
            LineKind.Storage => "storage",
            _ => "discount",
        };
}
