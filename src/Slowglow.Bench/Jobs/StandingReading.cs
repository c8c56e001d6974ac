using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Jobs;

/// <summary>A reading that has not been withdrawn.</summary>
/// <param name="Sequence">Its entry in the timeline.</param>
public sealed record StandingReading(int Sequence, DateTimeOffset At, Reading Reading);
