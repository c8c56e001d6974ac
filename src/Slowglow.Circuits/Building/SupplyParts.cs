using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Circuits.Building;

/// <summary>The parts between the mains and the rectified rails: every one of their pins stands on a net of the supply.</summary>
internal sealed class SupplyParts
{
    private readonly HashSet<string> parts;

    public SupplyParts(Sheet sheet)
    {
        HashSet<string> nets =
        [
            .. RectifiedNets.AlternatingNets(sheet),
            .. RectifiedNets.Of(sheet),
            NetTable.Ground,
            NetTable.Neutral,
            NetTable.Earth,
        ];
        parts = [.. sheet.Parts.Where(p => p.Pins.All(pin => nets.Contains(pin.Net))).Select(p => p.Designator)];
    }

    public bool Holds(string designator) => parts.Contains(designator);
}
