using Slowglow.Power.Stress;
using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>What exchanging a part does.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Was">Description of the old part.</param>
/// <param name="Is">Of the new one.</param>
/// <param name="Moved">Points that move by more than a fiftieth, most moved first.</param>
/// <param name="Points">How many points were compared.</param>
/// <param name="Levels">What it does to each channel, in words.</param>
/// <param name="Over">Parts over their rating now.</param>
/// <param name="OverBefore">Names of those that were so before.</param>
/// <param name="Own">What the new part stands itself.</param>
/// <param name="Findings">About the sheet with the new part.</param>
public sealed record Replacement(
    string Part,
    string Was,
    string Is,
    IReadOnlyList<MovedPoint> Moved,
    int Points,
    IReadOnlyList<string> Levels,
    IReadOnlyList<StressRow> Over,
    IReadOnlyList<string> OverBefore,
    IReadOnlyList<StressRow> Own,
    IReadOnlyList<Finding> Findings
);
