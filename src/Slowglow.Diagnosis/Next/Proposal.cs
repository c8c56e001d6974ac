using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>A reading weighed.</summary>
/// <param name="Rate">Bits per minute, risk priced in.</param>
internal sealed record Proposal(Bench Bench, int Index, double Bits, double Minutes, double RiskMinutes, string Risk)
{
    public Probe Probe => Bench.Block.Probes[Index];
    public double Rate => Bits / (Minutes + RiskMinutes);
}
