using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Levels, clean headroom and hum of each channel, healthy or with faults.</summary>
public sealed class ComputeLevels(BenchUnit unit)
{
    public IReadOnlyList<ChannelLevels> Run(Setup setup, IReadOnlyList<Fault> faults, CancellationToken cancel = default) =>
        throw new NotSupportedException(unit.Sheet.Unit + setup.Name + faults.Count + cancel.IsCancellationRequested);
}
