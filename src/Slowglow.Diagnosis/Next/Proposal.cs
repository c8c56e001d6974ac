using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>A reading weighed.</summary>
/// <param name="Minutes">Of work.</param>
/// <param name="Weighed">Minutes that the choice reckons with.</param>
internal sealed record Proposal(
    Bench Bench,
    int Index,
    double Bits,
    double Minutes,
    double Weighed,
    double RiskMinutes,
    string Risk
)
{
    public Probe Probe => Bench.Block.Probes[Index];
    public double Rate => Favour * Bits / (Weighed + RiskMinutes);

    /// <summary>Rate with the best reading after it, when that was looked into; 0 otherwise.</summary>
    public double RateOfTwo { get; init; }

    /// <summary>What the choice goes by.</summary>
    public double Worth => Math.Max(Rate, RateOfTwo);

    /// <summary>Of two that decide as much the one with the power off comes first.</summary>
    public double Favour => Bench.Setup.PowerOff ? 1.1 : 1;
}
