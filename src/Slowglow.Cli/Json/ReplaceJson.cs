using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;

namespace Slowglow.Cli.Json;

/// <summary>What exchanging a part does; <c>over</c> are parts over their rating with the new one, <c>overBefore</c> names those that were.</summary>
internal sealed record ReplaceJson(
    string Part,
    string Was,
    string Is,
    int Points,
    IReadOnlyList<MovedJson> Moved,
    IReadOnlyList<string> Levels,
    IReadOnlyList<StressRowJson> Own,
    IReadOnlyList<StressRowJson> Over,
    IReadOnlyList<string> OverBefore,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static ReplaceJson From(Replacement r, IReadOnlyList<DocumentFinding> findings) =>
        new(
            r.Part,
            r.Was,
            r.Is,
            r.Points,
            [
                .. r.Moved.Select(m => new MovedJson(
                    m.Before.Probe.Where,
                    m.Before.Probe.KindText,
                    m.Before.Nominal,
                    m.Before.Low,
                    m.Before.High,
                    m.Now,
                    m.Before.Unit,
                    m.InBand
                )),
            ],
            r.Levels,
            [.. r.Own.Select(StressRowJson.From)],
            [.. r.Over.Select(StressRowJson.From)],
            r.OverBefore,
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );
}
