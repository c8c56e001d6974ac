namespace Slowglow.Circuits;

/// <summary>Where a response has fallen by 3 dB (to half the power).</summary>
/// <param name="Hertz">NaN when it does not fall so far.</param>
/// <param name="Sigma">One standard deviation over tolerances, hertz; NaN with <paramref name="Hertz"/>.</param>
public readonly record struct Corner(double Hertz, double Sigma)
{
    public static Corner None { get; } = new(double.NaN, double.NaN);
}
