using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>What every test point should read, and within what band.</summary>
public sealed class ExpectReadings(BenchUnit unit)
{
    /// <summary>Every net and rail of the sheet in the setup: dc for nets, ripple for rails, ac for windings, inlet current; ohms with the power off.</summary>
    public IReadOnlyList<Expectation> Run(Setup setup, CancellationToken cancel = default) =>
        throw new NotSupportedException(unit.Sheet.Unit + setup.Name + cancel.IsCancellationRequested);
}
