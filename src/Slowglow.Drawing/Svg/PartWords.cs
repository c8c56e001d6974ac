using System.Globalization;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Svg;

/// <summary>What is said of a part to those who point at it or hear the drawing.</summary>
internal static class PartWords
{
    public static string Title(Symbol symbol, double share)
    {
        var what = symbol.Part is { } part ? $"{symbol.Name}, {part.Description}" : "mains inlet";
        return share >= 0.005
            ? $"{what}; share of suspicion {(100 * share).ToString("0", CultureInfo.InvariantCulture)} %"
            : what;
    }
}
