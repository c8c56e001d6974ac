using Slowglow.Quantities;

namespace Slowglow.Power.Rewinding;

/// <summary>One limit of a design and how it stands to it.</summary>
/// <param name="What">"window fill", "flux density at the highest mains".</param>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Most">Largest allowed.</param>
/// <param name="Unit">"%", "T", "degrees", "A/mm²".</param>
public sealed record LimitCheck(string What, double Value, double Most, string Unit)
{
    public bool Holds => Value <= Most * (1 + 1e-9);

    /// <summary>"window fill 132 %, at most 100 %".</summary>
    public override string ToString() => $"{What} {Engineering.Format(Value, Unit)}, at most {Engineering.Format(Most, Unit)}";
}
