using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>What could be measured next: a setup, and the answers of the plausible hypotheses to its probes.</summary>
internal sealed record Bench(Setup Setup, AnswerBlock Block);
