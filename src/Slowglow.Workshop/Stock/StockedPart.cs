using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.Stock;

/// <summary>Tells whether an order or a fitting speaks of what is in a bin.</summary>
public static class StockedPart
{
    /// <summary>Signs and capitals aside; what follows the last comma may say where it goes: "47 uF 450 V axial, C1".</summary>
    public static bool IsIt(string typed, string stocked)
    {
        var key = BoardCard.Key(stocked);
        var comma = typed.LastIndexOf(',');
        return key.Length > 0 && (BoardCard.Key(typed) == key || (comma > 0 && BoardCard.Key(typed[..comma]) == key));
    }
}
