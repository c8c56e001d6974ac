using Slowglow.Circuits;
using Slowglow.Power.Energy;
using Slowglow.Power.Stress;

namespace Slowglow.Bench.Questions;

/// <summary>What the parts of a unit stand, and what its reservoirs hold.</summary>
public sealed class StressUnit(BenchUnit unit)
{
    public UnitStress Run(CancellationToken cancel = default)
    {
        var question = new StressQuestion(unit.Worlds);
        var rows = question.Ask(cancel);
        return new(rows, question.Unsettled, Situation.Names(unit.Sheet));
    }

    /// <summary>Reservoirs after switch-off, with faults in the unit.</summary>
    public IReadOnlyList<StoredCharge> Charges(IReadOnlyList<Fault> faults, CancellationToken cancel = default) =>
        new StoredEnergyQuestion(unit.Worlds).Ask(faults, cancel);
}
