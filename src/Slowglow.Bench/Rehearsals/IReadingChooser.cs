using Slowglow.Diagnosis;

namespace Slowglow.Bench.Rehearsals;

/// <summary>Chooses readings for one unit, one after the other.</summary>
internal interface IReadingChooser
{
    /// <summary>The next reading to take; null when there is nothing left that is worth it.</summary>
    Choice? Next(HiddenUnit unit, DiagnosisResult result, IReadOnlySet<Choice> tried);
}
