namespace Slowglow.Diagnosis.Likelihood;

/// <summary>A threshold that is not sharp: the logistic curve.</summary>
internal static class SoftStep
{
    /// <summary>From 0 far below the middle to 1 far above it, a half at it; a width above it 0.73. Zero for a figure that does not exist.</summary>
    public static double At(double x, double middle, double width) =>
        double.IsNaN(x) ? 0 : 1 / (1 + Math.Exp(-(x - middle) / width));
}
