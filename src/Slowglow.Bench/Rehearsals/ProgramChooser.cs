using Slowglow.Diagnosis;

namespace Slowglow.Bench.Rehearsals;

/// <summary>What the program proposes.</summary>
internal sealed class ProgramChooser : IReadingChooser
{
    public Choice? Next(HiddenUnit unit, DiagnosisResult result, IReadOnlySet<Choice> tried) =>
        result.Next.Select(n => new Choice(n.Probe, n.Setup)).FirstOrDefault(c => !tried.Contains(c));
}
