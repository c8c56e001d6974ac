using CsCheck;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Tests.Workshop.Pricing;

/// <summary>Invented tax rates and the short ways of the money tests.</summary>
internal static class Rates
{
    public static readonly DateOnly Spring = new(2026, 3, 2);
    public static readonly DateOnly Autumn = new(2026, 11, 2);

    /// <summary>Standard goes from 20 to 19 on 1 July.</summary>
    public static readonly TaxTable Table = new([
        new("standard", 20, new(2020, 1, 1)),
        new("standard", 19, new(2026, 7, 1)),
        new("reduced", 7, new(2020, 1, 1)),
        new("none", 0, new(2020, 1, 1)),
    ]);

    public static PricingRule Exclusive(TaxRounding rounding = TaxRounding.PerDocument, string currency = "EUR") =>
        new(currency, false, rounding);

    public static PricingRule Inclusive(TaxRounding rounding = TaxRounding.PerDocument, string currency = "EUR") =>
        new(currency, true, rounding);

    public static ChargeLine Part(decimal quantity, decimal price, string tax = "standard") =>
        new(LineKind.Part, "part", quantity, price, tax);

    public static Gen<T> OneOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    public static ChargeLine Off(decimal price, string tax = "standard") => new(LineKind.Discount, "off", 1, price, tax);
}
