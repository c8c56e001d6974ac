namespace Slowglow.Power.Rewinding;

/// <summary>A rail (dc) or a winding without a rectifier (ac): what it should give and what it gives with the new transformer in the circuit.</summary>
/// <param name="Winding">That feeds it most.</param>
/// <param name="Where">Net, or two pins.</param>
/// <param name="IsAc">Rms volts of the winding; otherwise dc of the net.</param>
/// <param name="Asked">Volts with the transformer as drawn (and measured).</param>
/// <param name="Given">Volts with the design.</param>
public sealed record RailCheck(string Winding, string Where, bool IsAc, double Asked, double Given)
{
    /// <summary>Share by which it misses.</summary>
    public double Error => Math.Abs((Given / Asked) - 1);
}
