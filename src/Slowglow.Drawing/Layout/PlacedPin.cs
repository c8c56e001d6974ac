using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>A pin where it came to lie.</summary>
internal sealed record PlacedPin(SymbolPin Pin, Cell At, Heading Out, PinTie Tie)
{
    public string Net => Pin.Net;
}
