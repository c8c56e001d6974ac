using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;

namespace Slowglow.Sheets;

/// <summary>A circuit sheet, read and resolved: every part has its figures (given or assumed) and every pin its net.</summary>
public sealed record Sheet
{
    /// <summary>What is printed on the front.</summary>
    public required string Unit { get; init; }
    public string? Maker { get; init; }

    /// <summary>Year it was made; null when the sheet does not say.</summary>
    public int? Year { get; init; }
    public required Mains Mains { get; init; }
    public required IReadOnlyList<Switch> Switches { get; init; }
    public required IReadOnlyList<Control> Controls { get; init; }

    /// <summary>In the order of the document.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>Signal paths; the first is the default channel. Empty when the sheet names none.</summary>
    public required IReadOnlyList<SignalPath> Signals { get; init; }
    public required NetTable Nets { get; init; }

    /// <summary>Remarks on test points, by the name of the point as resolved by <see cref="NetTable"/>.</summary>
    public required IReadOnlyList<PointRemark> Points { get; init; }
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>Years old in a year, 0 or more; NaN when the sheet does not say when the unit was made.</summary>
    public double AgeIn(int year) => Year is { } made ? Math.Max(0, year - made) : double.NaN;
}
