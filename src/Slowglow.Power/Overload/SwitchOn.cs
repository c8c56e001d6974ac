using Slowglow.Quantities;

namespace Slowglow.Power.Overload;

/// <summary>What charging empty reservoirs asks of a fuse in the first cycles.</summary>
/// <param name="Fuse">Designator.</param>
/// <param name="SquareSeconds">Integral of the current's square, A²s; not a number where there is no figure.</param>
/// <param name="Melting">The least at which a fuse of its type and rating may melt, A²s.</param>
/// <param name="NoFigure">Why there is no figure; empty where there is one.</param>
public sealed record SwitchOn(string Fuse, double SquareSeconds, double Melting, string NoFigure = "")
{
    /// <summary>Below this share of what melts it a fuse stands it for years (common practice, no source).</summary>
    private const double Comfortable = 0.5;

    /// <summary>In a sentence.</summary>
    public string Words => NoFigure.Length > 0 ? NoFigure : Figure;

    private string Figure =>
        $"Switching on with empty reservoirs asks {Said(SquareSeconds)} A²s of {Fuse}, which may melt from {Said(Melting)} A²s: "
        + (
            SquareSeconds < Comfortable * Melting ? "it stands that for years."
            : SquareSeconds < Melting
                ? "it ages at every switching on; a time-lag type of the rating drawn is what belongs there."
            : "it may go at switching on with nothing wrong: look whether the type drawn was fitted."
        )
        + " Cold heaters, and a core that saturates (toroids most), come on top.";

    private static string Said(double value) => Engineering.Format(value, "", 2);
}
