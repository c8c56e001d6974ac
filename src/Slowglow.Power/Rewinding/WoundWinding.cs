namespace Slowglow.Power.Rewinding;

/// <summary>A winding as it is to be wound.</summary>
/// <param name="Need">What it has to give.</param>
/// <param name="SectionTurns">Whole turns of each section, start to finish.</param>
/// <param name="Wire">Size.</param>
/// <param name="Strands">Wires wound side by side; more than one where a single wire would be too stiff.</param>
/// <param name="Amps">Rms current worked out for.</param>
/// <param name="Layers">Layers that it takes.</param>
/// <param name="BuildMillimetres">Height of it on the former, insulation over it included.</param>
/// <param name="MeanTurnMillimetres">Length of its middle turn.</param>
/// <param name="ColdOhms">End to end at 20 degrees.</param>
/// <param name="HotOhms">End to end when warm.</param>
/// <param name="OffLoadVolts">Rms, end to end, nothing drawn anywhere.</param>
/// <param name="LoadedVolts">Rms, end to end, everything drawing its current.</param>
public sealed record WoundWinding(
    WindingNeed Need,
    IReadOnlyList<int> SectionTurns,
    WireSize Wire,
    int Strands,
    double Amps,
    int Layers,
    double BuildMillimetres,
    double MeanTurnMillimetres,
    double ColdOhms,
    double HotOhms,
    double OffLoadVolts,
    double LoadedVolts
)
{
    public string Name => Need.Name;

    public int Turns => SectionTurns.Sum();

    public double CopperSquareMillimetres => Strands * Wire.SquareMillimetres;

    /// <summary>A/mm².</summary>
    public double Density => Amps / CopperSquareMillimetres;

    /// <summary>Watts turned to heat in it when warm.</summary>
    public double Watts => Amps * Amps * HotOhms;

    /// <summary>Metres of wire, of each strand.</summary>
    public double Metres => Turns * MeanTurnMillimetres * 1e-3;

    /// <summary>Drop from no load to full load over the loaded volts; 0 for a primary.</summary>
    public double Regulation => Need.IsPrimary ? 0 : (OffLoadVolts - LoadedVolts) / LoadedVolts;
}
