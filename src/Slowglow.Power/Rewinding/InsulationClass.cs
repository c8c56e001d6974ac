namespace Slowglow.Power.Rewinding;

/// <summary>How hot insulation may run.</summary>
/// <param name="Letter">IEC 60085.</param>
/// <param name="ClassCelsius">Temperature of the class.</param>
/// <param name="WindingCelsius">Most for a winding in normal use, mean by resistance (EN 61558-1, as in reference/insulation_classes.csv).</param>
public sealed record InsulationClass(string Letter, double ClassCelsius, double WindingCelsius)
{
    /// <summary>Coolest first.</summary>
    public static IReadOnlyList<InsulationClass> All { get; } =
    [new("A", 105, 100), new("E", 120, 115), new("B", 130, 120), new("F", 155, 140), new("H", 180, 165)];

    public static InsulationClass? Named(string letter) =>
        All.FirstOrDefault(c => c.Letter.Equals(letter.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The lowest class that a winding so hot may have; null beyond the hottest.</summary>
    public static InsulationClass? For(double celsius) => All.FirstOrDefault(c => celsius <= c.WindingCelsius);
}
