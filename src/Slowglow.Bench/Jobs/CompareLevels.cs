using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Jobs;

/// <summary>What a fault would do to level, clean headroom and hum: whether it sounds like the complaint.</summary>
public sealed class CompareLevels(BenchUnit unit)
{
    /// <summary>Null when the sheet names no signal path. Taken with the power on and the valves in, whatever the bench stands in.</summary>
    public LevelComparison? Run(Fault fault, CancellationToken cancel = default)
    {
        var levels = new ComputeLevels(unit);
        var healthy = levels.Run(Setup.Default, [], cancel);
        if (healthy.Count == 0)
        {
            return null;
        }

        var actual = levels.Run(Setup.Default, [fault], cancel);
        var channels = healthy.Zip(actual, (h, a) => new ComparedChannel(h, a, LevelWords.Compare(h, a)));
        return new(fault, [.. channels]);
    }
}
