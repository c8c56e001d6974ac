using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>What a hypothesis expects of one reading, on the probe's scale.</summary>
/// <param name="Kind">Whether it expects a figure.</param>
/// <param name="Mean">Centre; meaningless without a figure.</param>
/// <param name="Sd">Width with tolerances, meter and model; meaningless without a figure.</param>
internal readonly record struct Prediction(AnswerKind Kind, double Mean, double Sd)
{
    public bool HasFigure => Kind == AnswerKind.Value;
}
