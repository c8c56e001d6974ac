namespace Slowglow.Bench.Rehearsals;

/// <summary>Draws that a rehearsal needs.</summary>
internal static class Chance
{
    /// <summary>Standard normal.</summary>
    public static double Normal(this Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>A factor around 1 with that standard deviation of its logarithm.</summary>
    public static double Factor(this Random random, double sigma) => Math.Exp(sigma * random.Normal());

    public static T Pick<T>(this Random random, IReadOnlyList<T> items) => items[random.Next(items.Count)];
}
