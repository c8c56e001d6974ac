using Slowglow.Workshop.Shop;

namespace Slowglow.Workshop.Words;

/// <summary>What the shop has settled once for all its benches.</summary>
public sealed class ShopSettings
{
    /// <summary>There is one row.</summary>
    public int Id { get; init; } = 1;

    public TradeWords Words { get; set; }

    /// <summary>Null until the owner has set any: <see cref="ExampleRules"/> hold meanwhile.</summary>
    public ShopRules? Rules { get; set; }
}
