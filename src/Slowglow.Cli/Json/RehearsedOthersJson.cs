using Slowglow.Bench.Rehearsals;

namespace Slowglow.Cli.Json;

/// <summary>Units that hold what the program does not expect.</summary>
/// <param name="WithoutOverclaim">Share without a claim above 70 % for a single part that is not at fault; null without cases.</param>
internal sealed record RehearsedOthersJson(int Cases, double WithoutOverclaim)
{
    public static RehearsedOthersJson From(IReadOnlyList<RehearsalCase> cases) =>
        new(cases.Count, RehearsalReport.WithoutOverclaim(cases));
}
