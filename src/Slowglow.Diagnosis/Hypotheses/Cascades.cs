using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.RootCauses;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>One fault often brings the next: a part that another's fault overloads fails with it.</summary>
internal sealed class Cascades(HypothesisList list, StressStore stresses)
{
    /// <summary>Common practice, no source: twice the rating makes the second fault tenfold likelier, four times and more twentyfold.</summary>
    private const double EachRatio = 5;
    private const double MostRatio = 4;

    /// <summary>How much likelier two single faults are together than by chance, 1 to 20.</summary>
    public double Raise(int first, int second) => Math.Max(Of(Overload(first, second)), Of(Overload(second, first)));

    /// <summary>By how much the world of one fault overloads the part of the other; null when it does not.</summary>
    public Overstress? Overload(int cause, int victim)
    {
        var part = list[victim].Part;
        return stresses.Of(cause).TryGetValue(part, out var stress)
            ? Overstress.Of(stress, stresses.Of(0).GetValueOrDefault(part))
            : null;
    }

    private static double Of(Overstress? overload) =>
        overload is null ? 1 : Math.Max(1, EachRatio * Math.Min(overload.Ratio, MostRatio));
}
