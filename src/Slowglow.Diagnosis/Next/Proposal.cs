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
    public double Rate => Bits / (Weighed + RiskMinutes);
}
