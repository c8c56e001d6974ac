namespace Slowglow.Drawing;

/// <summary>Everything the drawing is told about the unit; it works nothing out itself.</summary>
public sealed record DrawingFigures
{
    public static DrawingFigures None { get; } = new();

    public IReadOnlyList<PointFigure> Points { get; init; } = [];

    /// <summary>Share of suspicion (0 to 1) by designator.</summary>
    public IReadOnlyDictionary<string, double> Suspicion { get; init; } = new Dictionary<string, double>();
    public NextMark? Next { get; init; }
}
