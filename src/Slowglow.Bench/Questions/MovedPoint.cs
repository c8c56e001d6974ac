namespace Slowglow.Bench.Questions;

/// <summary>A point that reads otherwise after a part was exchanged.</summary>
/// <param name="Before">As it was, with its band.</param>
/// <param name="Now">Nominal with the other part; NaN when there is no figure.</param>
public sealed record MovedPoint(Expectation Before, double Now)
{
    /// <summary>False when a healthy unit as drawn would hardly read so.</summary>
    public bool InBand => Now >= Before.Low && Now <= Before.High;
}
