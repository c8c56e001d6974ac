using Slowglow.Cli.Desk;
using Slowglow.Power.Overload;

namespace Slowglow.Cli.Json;

/// <summary>What overloads a part.</summary>
internal sealed record OverloadJson(
    string Part,
    IReadOnlyList<OverloadCauseJson> Causes,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static OverloadJson From(string part, IReadOnlyList<OverloadCause> causes, IReadOnlyList<DocumentFinding> findings) =>
        new(
            part,
            [
                .. causes.Select(c => new OverloadCauseJson(
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
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );
}
