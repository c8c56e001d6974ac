namespace Slowglow.Diagnosis.Next;

/// <summary>A stretch of outcomes in which one cure leads.</summary>
/// <param name="Low">On the probe's scale; negative infinity when open below.</param>
/// <param name="High">On the probe's scale; positive infinity when open above.</param>
/// <param name="IsNoFigure">The meter shows overload or nothing that holds.</param>
/// <param name="Probability">Of the outcome.</param>
/// <param name="Shares">Probability of each cure given the outcome.</param>
internal sealed record OutcomeRange(double Low, double High, bool IsNoFigure, double Probability, double[] Shares);
