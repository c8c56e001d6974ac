namespace Slowglow.Drawing.Symbols;

/// <summary>How much room words take. Widths are those of a wide common sans face, so that narrower ones fit as well.</summary>
internal static class TextSize
{
    /// <summary>Pixels of one grid unit.</summary>
    public const double Unit = 10;

    /// <summary>Pixels a letter at most takes on average at the drawing's size of letters (11 px).</summary>
    private const double Letter = 6.6;

    public static int Cells(string text) => (int)Math.Ceiling(text.Length * Letter / Unit);

    public static double Pixels(string text) => text.Length * Letter;
}
