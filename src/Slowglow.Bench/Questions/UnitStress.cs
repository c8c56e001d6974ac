using Slowglow.Power.Stress;

namespace Slowglow.Bench.Questions;

/// <summary>What the parts of a unit stand.</summary>
/// <param name="Rows">As <see cref="StressQuestion.Ask"/>.</param>
/// <param name="Unsettled">Situations in which the unit does not settle.</param>
/// <param name="Situations">Those that were looked at.</param>
public sealed record UnitStress(IReadOnlyList<StressRow> Rows, IReadOnlyList<string> Unsettled, IReadOnlyList<string> Situations);
