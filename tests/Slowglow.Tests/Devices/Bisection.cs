namespace Slowglow.Tests.Devices;

/// <summary>Where a falling function crosses zero, by halving.</summary>
internal static class Bisection
{
    public static double Zero(Func<double, double> falling, double low, double high)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (falling(middle) > 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>Slope by central difference.</summary>
    public static double Slope(Func<double, double> of, double at, double step) => (of(at + step) - of(at - step)) / (2 * step);
}
