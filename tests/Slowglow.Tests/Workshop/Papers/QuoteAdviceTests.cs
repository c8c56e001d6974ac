using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Xunit;
using static Slowglow.Tests.Workshop.Pricing.Rates;

namespace Slowglow.Tests.Workshop.Papers;

public sealed class QuoteAdviceTests
{
    private static readonly Quote Quote = new(
        [
            new("repair", PriceList.Work([Part(1, 150)], Exclusive(), Table, Autumn)),
            new("rewind", PriceList.Work([Part(1, 300)], Exclusive(), Table, Autumn)),
        ],
        Autumn,
        Autumn.AddDays(30),
        ""
    );

    /// <summary>178.50 and 357.00 against a limit of 200.00 and 60 % of 500.00 = 300.00.</summary>
    [Fact]
    public void Option_above_the_limit_and_the_worth_is_said_to_be()
    {
        var said = QuoteAdvice.On(Quote, new Amount(200, "EUR"), new Amount(500, "EUR"), 60).ToList();

        Assert.Equal(2, said.Count);
        Assert.All(said, s => Assert.StartsWith("\"rewind\" comes to 357.00 EUR", s, StringComparison.Ordinal));
    }

    /// <summary>178.50 EUR is above 140 GBP at any rate of late, but the program knows none: it has to say so rather than nothing.</summary>
    [Fact]
    public void A_limit_in_another_currency_is_handed_back_to_be_compared_by_hand()
    {
        var said = Assert.Single(QuoteAdvice.On(Quote, new Amount(140, "GBP"), null, 60));
        Assert.Contains("140.00 GBP", said, StringComparison.Ordinal);
        Assert.Contains("compare them yourself", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_said_without_limit_and_worth() => Assert.Empty(QuoteAdvice.On(Quote, null, null, 60));

    [Fact]
    public void Limit_itself_may_be_reached() => Assert.False(QuoteAdvice.Passes(new(200, "EUR"), new(200, "EUR")));
}
