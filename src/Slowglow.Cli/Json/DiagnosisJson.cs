using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Diagnosis;

namespace Slowglow.Cli.Json;

/// <summary>The answer to a diagnosis.</summary>
internal sealed record DiagnosisJson(
    IReadOnlyList<SuspectJson> Suspects,
    double Healthy,
    double NoneOfThese,
    IReadOnlyList<NextJson> Next,
    IReadOnlyList<RootCause> RootCauses,
    string Summary,
    IReadOnlyList<UnderstoodWord> Complaint,
    IReadOnlyList<VerdictJson> Readings,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<string> RuledOut,
    string Prove,
    string Stop,
    IReadOnlyList<FindingJson> Findings,
    string BeforePower
)
{
    public static DiagnosisJson From(DiagnosedUnit diagnosed, DiagnosisResult result, IReadOnlyList<DocumentFinding> findings) =>
        new(
            [.. result.Suspects.Select(SuspectJson.From)],
            result.Healthy,
            result.NoneOfThese,
            [.. result.Next.Select(n => NextJson.From(n, diagnosed.Setups))],
            result.RootCauses,
            result.Summary,
            result.Complaint,
            [.. result.Readings.Select(r => VerdictJson.From(r, diagnosed.Setups))],
            result.Doubts,
            result.RuledOut,
            result.Prove,
            result.Stop,
            [.. findings.Select(FindingJson.From)],
            result.BeforePower
        );
}
