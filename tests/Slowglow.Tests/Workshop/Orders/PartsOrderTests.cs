using CsCheck;
using Slowglow.Tests.Workshop.Pricing;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Orders;
using Xunit;

namespace Slowglow.Tests.Workshop.Orders;

public sealed class PartsOrderTests
{
    /// <summary>
    /// 4 at 3.50 and 1 at 26.00 USD = 40.00, freight 12.50, 52.50 USD at 0.92 = 48.30 EUR. By value 14/40 and 26/40:
    /// 16.905 and 31.395; cut to 16.90 and 31.39, and the cent that is left goes to the first. 16.91 / 4 = 4.2275 a piece.
    /// </summary>
    [Fact]
    public void Foreign_order_costs_what_was_paid_for_it_to_the_cent()
    {
        var order = Order("USD", 0.92m, 12.50m, new OrderLine("capacitor", 4, 3.50m), new OrderLine("choke", 1, 26));

        Assert.Equal(new Amount(52.50m, "USD"), order.Total);
        Assert.Equal(new Amount(48.30m, "EUR"), order.TotalIn("EUR"));
        Assert.Equal([16.91m, 31.39m], order.Landed("EUR").Select(l => l.Landed));
        Assert.Equal(4.2275m, order.Landed("EUR")[0].LandedEach);
    }

    [Fact]
    public void Shares_add_up_to_the_sum() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 1000].List[1, 9], Rates.OneOf("EUR", "JPY", "KWD"))
            .Sample(
                (coins, weights, currency) =>
                {
                    var sum = Currencies.Round(coins / 100m, currency);
                    var shares = Sharing.Share(sum, [.. weights.Select(w => (decimal)w)], currency);
                    Assert.Equal(sum, shares.Sum());
                    Assert.All(shares, s => Assert.True(s >= 0));
                }
            );

    [Fact]
    public void Order_with_everything_wrong_is_told_everything()
    {
        var wrong = Order("Euro", 0, -1).Look();

        Assert.Equal(4, wrong.Count);
    }

    private static PartsOrder Order(string currency, decimal rate, decimal freight, params OrderLine[] lines) =>
        new("Invented Valve Supply", currency, rate, freight, lines, null, "", true);
}
