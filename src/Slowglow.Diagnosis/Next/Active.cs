namespace Slowglow.Diagnosis.Next;

/// <summary>A hypothesis that still counts.</summary>
/// <param name="Hypothesis">Its index.</param>
/// <param name="Cure">Index of the cure it ends in.</param>
/// <param name="Probability">Its probability now.</param>
internal readonly record struct Active(int Hypothesis, int Cure, double Probability);
