namespace Slowglow.Power.Rewinding;

/// <summary>What one winding has to give.</summary>
/// <param name="Name">As on the drawing.</param>
/// <param name="SectionVolts">Rms volts of each section between neighbouring ends: of a primary the mains, of a secondary on load.</param>
/// <param name="Amps">Rms current that wire and heat are worked out for, &gt; 0; of a primary NaN = follows from the rest.</param>
/// <param name="SagAmps">Rms current at which the volts hold; as a rule the same.</param>
/// <param name="IsPrimary">Fed from the mains.</param>
public sealed record WindingNeed(string Name, IReadOnlyList<double> SectionVolts, double Amps, double SagAmps, bool IsPrimary)
{
    public double Volts => SectionVolts.Sum();

    public double VoltAmperes => Volts * Amps;

    /// <summary>A secondary without taps.</summary>
    public static WindingNeed Secondary(string name, double volts, double amps) => new(name, [volts], amps, amps, false);

    /// <summary>A primary without taps; its current follows.</summary>
    public static WindingNeed Primary(string name, double volts) => new(name, [volts], double.NaN, double.NaN, true);
}
