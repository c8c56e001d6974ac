using Slowglow.Workshop.Money;

namespace Slowglow.Tests.Workshop;

public sealed class AmountTests
{
    [Theory]
    [InlineData("200 EUR", "200.00 EUR")]
    [InlineData("GBP 180.5", "180.50 GBP")]
    [InlineData("1,250.00 USD", "1250.00 USD")]
    public void Amount_is_read_with_its_currency_on_either_side(string text, string said) =>
        Assert.Equal(said, Amount.Read(text)!.ToString());

    [Theory]
    [InlineData("200")]
    [InlineData("200 euro")]
    [InlineData("EUR GBP")]
    [InlineData("")]
    public void Anything_else_is_no_amount(string text) => Assert.Null(Amount.Read(text));
}
