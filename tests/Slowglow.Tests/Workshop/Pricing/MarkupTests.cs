using CsCheck;
using Slowglow.Workshop.Pricing;
using Xunit;

namespace Slowglow.Tests.Workshop.Pricing;

public sealed class MarkupTests
{
    private static readonly MarkupRule Rule = new([new(10, 100), new(50, 50), new(null, 25)], 1, 0.05m);

    /// <summary>0.40 + 1.00 (the least) = 1.40; 4.00 + 100 % = 8.00; 10.01 + 50 % = 15.015, up to 15.05; 120 + 25 % = 150.</summary>
    [Theory]
    [InlineData(0.40, 1.40)]
    [InlineData(4.00, 8.00)]
    [InlineData(10.00, 20.00)]
    [InlineData(10.01, 15.05)]
    [InlineData(120, 150)]
    public void Price_follows_the_step_of_the_cost(decimal cost, decimal price) => Assert.Equal(price, Rule.Price(cost, "EUR"));

    [Fact]
    public void Part_is_never_sold_below_its_cost() =>
        Gen.Int[0, 1_000_000].Sample(cents => Assert.True(Rule.Price(cents / 100m, "EUR") >= cents / 100m));
}
