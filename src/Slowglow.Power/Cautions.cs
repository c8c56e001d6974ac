namespace Slowglow.Power;

/// <summary>What every page and printout of this room repeats.</summary>
public static class Cautions
{
    /// <summary>In the order of danger.</summary>
    public static IReadOnlyList<string> Always { get; } =
    [
        "Mains and HT can kill, also minutes after switch-off. Work on live equipment is for people trained and permitted to do it.",
        "One hand, an insulated probe, a residual-current device, and never alone. An isolation transformer is no protection from HT.",
        "A lamp limiter limits current, not voltage.",
        "Discharge through a resistor, never a screwdriver, and measure before touching.",
        "Figures from a model are expectations, not permission. Local codes, the maker's instructions and licensed practice come first.",
    ];
}
