using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>What a part of the healthy unit stands while it runs at rated mains, without a signal.</summary>
public sealed class PartDuty(BenchUnit unit)
{
    /// <summary>Null for parts that nothing is worked out for.</summary>
    public PartStress? Of(string part) => unit.Worlds.Stress(Setup.Default, []).FirstOrDefault(s => s.Part == part);
}
