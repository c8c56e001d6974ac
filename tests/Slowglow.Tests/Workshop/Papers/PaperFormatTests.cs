using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;

namespace Slowglow.Tests.Workshop.Papers;

/// <summary>How a shop writes days and figures: common practice, no source; the year first is ISO 8601.</summary>
public sealed class PaperFormatTests
{
    [Theory]
    [InlineData("1,234.50", "1,234,567.50", "0.25", "12.5 %")]
    [InlineData("1.234,50", "1.234.567,50", "0,25", "12,5 %")]
    [InlineData("1 234,50", "1\u00a0234\u00a0567,50", "0,25", "12,5 %")]
    [InlineData("1'234.50", "1'234'567.50", "0.25", "12.5 %")]
    [InlineData("1234.50", "1234567.50", "0.25", "12.5 %")]
    public void Figures_stand_as_the_shop_writes_them(string shape, string large, string quantity, string percent)
    {
        var format = PaperFormat.Usual with { NumberShape = shape };
        Assert.Equal(large, format.Figure(1_234_567.5m));
        Assert.Equal(large + " EUR", format.Say(new Amount(1_234_567.5m, "EUR")));
        Assert.Equal((quantity, percent), (format.Quantity(0.25m), format.Percent(12.5m)));
        Assert.StartsWith("-", format.Figure(-3), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("d MMMM yyyy", "9 November 2026")]
    [InlineData("dd.MM.yyyy", "09.11.2026")]
    [InlineData("dd/MM/yyyy", "09/11/2026")]
    [InlineData("MM/dd/yyyy", "11/09/2026")]
    [InlineData("yyyy-MM-dd", "2026-11-09")]
    public void Days_stand_as_the_shop_writes_them(string shape, string day) =>
        Assert.Equal(day, (PaperFormat.Usual with { DayShape = shape }).Day(new(2026, 11, 9)));

    [Fact]
    public void A_shape_or_a_mains_that_nobody_has_is_refused()
    {
        var rules = ExampleRules.Rules;
        Assert.Empty(RulesCheck.Look(rules with { Format = PaperFormat.Usual, MainsVolts = 120 }));
        Assert.Single(RulesCheck.Look(rules with { Format = new("yy", "1,234.50") }));
        Assert.Single(RulesCheck.Look(rules with { MainsVolts = 23 }));
        Assert.Single(RulesCheck.Look(rules with { MainsVolts = double.NaN }));
    }
}
