using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Answers;

/// <summary>The answers of all hypotheses to one probe in one setup.</summary>
internal readonly record struct AnswerColumn(AnswerBlock Block, int Index)
{
    public Probe Probe => Block.Probes[Index];
}
