namespace Slowglow.Workshop.Money;

/// <summary>Shares a sum so that the shares add up to it again.</summary>
public static class Sharing
{
    /// <summary>
    /// In proportion to the weights (at least 0; equal shares when all are 0), in steps of the smallest coin; the shares cut off
    /// most get the coins that are left (largest remainder).
    /// </summary>
    public static IReadOnlyList<decimal> Share(decimal sum, IReadOnlyList<decimal> weights, string currency)
    {
        if (weights.Count == 0)
        {
            return [];
        }

        var all = weights.Sum();
        var exact = weights.Select(w => all == 0 ? sum / weights.Count : sum * w / all).ToArray();
        var coin = Coin(currency);
        var shares = exact.Select(e => Math.Floor(e / coin) * coin).ToArray();
        var left = sum - shares.Sum();
        foreach (var i in Enumerable.Range(0, shares.Length).OrderByDescending(i => exact[i] - shares[i]).ThenBy(i => i))
        {
            var given = Math.Min(coin, left);
            shares[i] += given;
            left -= given;
        }

        return shares;
    }

    private static decimal Coin(string currency) =>
        Enumerable.Range(0, Currencies.Decimals(currency)).Aggregate(1m, (c, _) => c / 10);
}
