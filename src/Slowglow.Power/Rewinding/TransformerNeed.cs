namespace Slowglow.Power.Rewinding;

/// <summary>What a mains transformer has to do.</summary>
/// <param name="Windings">At least one primary and one secondary. Primaries share the load by their volt-amperes.</param>
/// <param name="Hertz">Lowest mains frequency, &gt; 0.</param>
/// <param name="HighMains">Highest mains over nominal, 1 to 1.2.</param>
public sealed record TransformerNeed(IReadOnlyList<WindingNeed> Windings, double Hertz, double HighMains = 1.1)
{
    /// <summary>Volts that the load is spread over where that is worst; null = all primaries together.</summary>
    public double? SpreadVolts { get; init; }

    /// <summary>
    /// Share of the secondaries' volt-amperes that the primary sees: less than 1 where halves of a winding conduct by turns.
    /// </summary>
    public double Reflected { get; init; } = 1;

    public IEnumerable<WindingNeed> Primaries => Windings.Where(w => w.IsPrimary);

    public IEnumerable<WindingNeed> Secondaries => Windings.Where(w => !w.IsPrimary);

    /// <summary>Volt-amperes given out.</summary>
    public double VoltAmperes => Secondaries.Sum(w => w.VoltAmperes);
}
