using Slowglow.Cli.Desk;
using Slowglow.Power.Overload;

namespace Slowglow.Cli.Json;

/// <summary>What overloads a part.</summary>
internal sealed record OverloadJson(
    string Part,
    IReadOnlyList<OverloadCauseJson> Causes,
    SwitchOnJson? SwitchOn,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static OverloadJson From(string part, OverloadAnswer answer, IReadOnlyList<DocumentFinding> findings) =>
        new(
            part,
            [
                .. answer.Causes.Select(c => new OverloadCauseJson(
                    c.Part,
                    c.Fault,
                    c.What,
                    c.Unit,
                    c.Value,
                    c.Healthy,
                    c.Ratio,
                    c.Seconds,
                    c.ClearedBy
                )),
            ],
            answer.SwitchOn is { } s ? new(s.SquareSeconds, s.Melting, s.Words) : null,
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );
}
