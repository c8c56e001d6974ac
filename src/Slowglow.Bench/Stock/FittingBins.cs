using Slowglow.Power.Stress;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <param name="Stands">What the part stands at the worst; null when nothing is known of it.</param>
/// <param name="Bins">Whose pieces would do.</param>
public sealed record FittingBins(StressRow? Stands, IReadOnlyList<StockItem> Bins);
