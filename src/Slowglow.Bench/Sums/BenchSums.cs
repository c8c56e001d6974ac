namespace Slowglow.Bench.Sums;

/// <summary>Every sum, in the order in which they stand on the page.</summary>
public static class BenchSums
{
    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new ValveStageSum(),
        new OpAmpStageSum(),
        new DividerSum(),
        new CornerSum(),
        new LevelSum(),
        new ParallelSum(),
        new ColourSum(),
        new PartCodeSum(),
        new ReservoirSum(),
        new DischargeSum(),
    ];
}
