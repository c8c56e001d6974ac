namespace Slowglow.Power.Rewinding;

/// <summary>
/// The former on the tongue: walls of 1 mm and 0.5 mm of air towards the outer limb (common practice, no source; EI96 is known to leave 15 by
/// 46 mm of a 16 by 48 mm window).
/// </summary>
internal static class Former
{
    private const double Wall = 1.0;
    private const double Air = 0.25;

    /// <summary>Turns never lie as close as their diameter says, along the layer and on top of each other (common practice, no source).</summary>
    private const double AlongLoss = 1.05;
    private const double BuildLoss = 1.05;

    /// <summary>Film between layers and over a winding, mm (common practice, no source).</summary>
    private const double BetweenLayers = 0.05;
    private const double OverWinding = 0.15;

    /// <summary>Over the primary: three layers of film, and a wider gap.</summary>
    private const double OverPrimary = 0.3;

    /// <summary>Room for the coil, mm.</summary>
    public static double Room(Lamination l) => l.WindowWidth - Wall - Air;

    private static double Length(Lamination l) => l.WindowHeight - (2 * Wall);

    /// <summary>Layers and height of a winding with so many turns of wire, insulation over it included.</summary>
    public static (int Layers, double Build) Lay(Lamination l, int turns, WireSize wire, int strands, bool isPrimary)
    {
        var over = wire.OverallMillimetres;
        var perLayer = Math.Max(1, (int)(Length(l) / (over * strands * AlongLoss)));
        var layers = (int)Math.Ceiling((double)turns / perLayer);
        var build = (layers * over * BuildLoss) + ((layers - 1) * BetweenLayers) + (isPrimary ? OverPrimary : OverWinding);
        return (layers, build);
    }

    /// <summary>Length of a turn, mm, its middle standing so high above the former: straight sides, and corners of that radius.</summary>
    public static double Turn(CoreStack core, double height) =>
        (2 * (core.Lamination.Tongue + core.Stack)) + (2 * Math.PI * (Wall + height));
}
