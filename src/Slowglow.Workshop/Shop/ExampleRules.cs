using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Workshop.Shop;

/// <summary>Invented figures to begin with. No country's rates: the owner sets the shop's own.</summary>
public static class ExampleRules
{
    private static readonly DateOnly Ever = new(2020, 1, 1);

    public static ShopRules Rules { get; } =
        new(
            new Party(
                "Example Bench",
                "1 Invented Lane, Nowhere\nRates and fees are examples: the shop has not set its own.",
                "000 000 000",
                ""
            ),
            new PricingRule("EUR", false, TaxRounding.PerDocument),
            new TaxTable([new("standard", 20, Ever), new("reduced", 10, Ever), new("none", 0, Ever)]),
            "standard",
            [new LabourRate("bench", 60)],
            new HoursRule(15, 30),
            new MarkupRule([new(10, 100), new(50, 50), new(null, 25)], 1, 0.05m),
            45,
            6,
            60,
            30,
            14,
            new StorageRule(30, 1, 60, [14, 30, 60]),
            Safety.SafetySets.Names[0],
            "The bench fee is charged for finding the fault and is taken off the repair. We call before we pass the limit. "
                + "Goods not collected are kept and reminded of as the law here says.",
            "Payable within 14 days.",
            7,
            [],
            true
        );
}
