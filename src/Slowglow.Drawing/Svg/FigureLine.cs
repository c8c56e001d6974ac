namespace Slowglow.Drawing.Svg;

/// <summary>A line of a point's figures, with the class it is written in.</summary>
internal sealed record FigureLine(string Text, string Class);
