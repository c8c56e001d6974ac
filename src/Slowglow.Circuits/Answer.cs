namespace Slowglow.Circuits;

/// <summary>What a world says to a probe.</summary>
/// <param name="Kind">Whether there is a figure.</param>
/// <param name="Value">Base units; NaN when there is no figure. Includes the loading of the meter.</param>
/// <param name="Spread">
/// One entry for each of <see cref="Circuit.Parameters"/>: the change of the value for one standard deviation of that parameter (signed).
/// The covariance of two answers of one world is the dot product of their spreads. Empty when there is no figure or spread was not asked for.
/// </param>
public readonly record struct Answer(AnswerKind Kind, double Value, double[] Spread)
{
    /// <summary>One standard deviation of the value over tolerances; 0 without spread.</summary>
    public double Sigma
    {
        get
        {
            double sum = 0;
            foreach (var s in Spread ?? [])
            {
                sum += s * s;
            }
            return Math.Sqrt(sum);
        }
    }

    public bool HasValue => Kind == AnswerKind.Value;

    public static Answer None(AnswerKind kind) => new(kind, double.NaN, []);
}
