namespace Slowglow.Power.Rewinding;

/// <summary>
/// A scrapless E and I lamination. Everything follows from the tongue: window half a tongue by one and a half, yokes and outer limbs half
/// a tongue, iron path 4 + pi/2 tongues (reference/transformer_rules.csv).
/// </summary>
/// <param name="Name">As the trade calls it: EI96.</param>
/// <param name="Tongue">Millimetres, &gt; 0.</param>
public sealed record Lamination(string Name, double Tongue)
{
    /// <summary>Sizes of the trade, small to large (reference/transformer_cores.csv).</summary>
    public static IReadOnlyList<Lamination> All { get; } =
    [
        new("EI30", 10),
        new("EI42", 14),
        new("EI48", 16),
        new("EI54", 18),
        new("EI60", 20),
        new("EI66", 22),
        new("EI76", 25.4),
        new("EI78", 26),
        new("EI84", 28),
        new("EI96", 32),
        new("EI105", 35),
        new("EI120", 40),
    ];

    public double WindowWidth => Tongue / 2;

    public double WindowHeight => 1.5 * Tongue;

    public double IronPath => (4 + (Math.PI / 2)) * Tongue;

    public double OutlineWidth => 3 * Tongue;

    public double OutlineHeight => 2.5 * Tongue;

    /// <summary>Face of the iron without the two windows, mm²: six tongues squared.</summary>
    public double Face => (OutlineWidth * OutlineHeight) - (2 * WindowWidth * WindowHeight);

    /// <summary>The size of that name, or null.</summary>
    public static Lamination? Named(string name) =>
        All.FirstOrDefault(l => l.Name.Equals(name.Replace(" ", "").Replace("-", ""), StringComparison.OrdinalIgnoreCase));
}
