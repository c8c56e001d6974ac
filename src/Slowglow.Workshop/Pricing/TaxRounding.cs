namespace Slowglow.Workshop.Pricing;

/// <summary>Where tax is rounded to what can be paid. Both are in use; which one a shop may use its local law says.</summary>
public enum TaxRounding
{
    /// <summary>On the sum of each rate.</summary>
    PerDocument,

    /// <summary>On each line; the sum of a rate is the sum of its lines.</summary>
    PerLine,
}
