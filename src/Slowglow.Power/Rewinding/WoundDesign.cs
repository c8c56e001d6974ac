namespace Slowglow.Power.Rewinding;

/// <summary>A transformer worked out to the last turn, with how it stands to its limits.</summary>
/// <param name="Core">What it is wound for.</param>
/// <param name="Steel">Iron.</param>
/// <param name="Hertz">Mains frequency.</param>
/// <param name="Windings">From the tongue outwards.</param>
/// <param name="Tesla">Flux density at nominal mains, nothing drawn.</param>
/// <param name="HighTesla">The same at the highest mains.</param>
/// <param name="IronWatts">Loss in the iron at nominal mains.</param>
/// <param name="OffLoadAmps">Rms current of the primary side with nothing drawn, a guide within a factor of two.</param>
/// <param name="Fill">Height of the coil over the room for it.</param>
/// <param name="RiseKelvin">Mean of the windings over the air around.</param>
/// <param name="Checks">Every limit.</param>
public sealed record WoundDesign(
    CoreStack Core,
    Steel Steel,
    double Hertz,
    IReadOnlyList<WoundWinding> Windings,
    double Tesla,
    double HighTesla,
    double IronWatts,
    double OffLoadAmps,
    double Fill,
    double RiseKelvin,
    IReadOnlyList<LimitCheck> Checks
)
{
    public bool Fits => Checks.All(c => c.Holds);

    public double CopperWatts => Windings.Sum(w => w.Watts);

    public double VoltAmperes => Windings.Where(w => !w.Need.IsPrimary).Sum(w => w.Need.VoltAmperes);

    public double TurnsPerVolt
    {
        get
        {
            var primary = Windings.First(w => w.Need.IsPrimary);
            return primary.Turns / primary.Need.Volts;
        }
    }

    /// <summary>Why it cannot be wound: the first limit missed, the window's before all others; null when it can.</summary>
    public LimitCheck? Misses => Checks.FirstOrDefault(c => !c.Holds);

    public WoundWinding Of(string name) => Windings.Single(w => w.Name == name);
}
