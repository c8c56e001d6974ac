namespace Slowglow.Power.Rewinding;

/// <summary>
/// A primary for several mains voltages: two equal halves with taps, side by side for the low ones and in series for the high ones, so
/// that all copper works at every voltage.
/// </summary>
/// <param name="Taps">Volts of the taps of each half, from its start, low to high.</param>
/// <param name="Straps">One for each mains voltage, low to high.</param>
public sealed record TappedPrimary(IReadOnlyList<double> Taps, IReadOnlyList<Strap> Straps)
{
    /// <summary>Up to here the halves are used side by side.</summary>
    private const double LowMains = 140;

    /// <summary>
    /// The fewest taps that give every voltage exactly; null when the voltages are none that two halves can share (all must lie within a
    /// factor of two and a half, at or above 80 V).
    /// </summary>
    public static TappedPrimary? For(IReadOnlyList<double> mains)
    {
        double[] wanted = [.. mains.Distinct().Order()];
        if (wanted.Length == 0 || wanted[0] < 80 || wanted[^1] > 2.5 * wanted[0])
        {
            return null;
        }

        double[] low = [.. wanted.Where(v => v <= LowMains)];
        double[] high = [.. wanted.Where(v => v > LowMains)];
        double[] offered =
        [
            .. high.Select(v => v / 2)
                .Concat(high.SelectMany(v => low.Select(l => v - l)))
                .Where(t => t is >= 40 and <= LowMains),
        ];
        double[] more = [.. offered.Distinct().Except(low)];
        for (var count = 0; count <= more.Length; count++)
        {
            foreach (var chosen in Choose(more, count))
            {
                double[] taps = [.. low.Concat(chosen).Order()];
                if (high.All(v => Series(taps, v) is not null))
                {
                    return new(taps, [.. low.Select(v => new Strap(v, false, v, v)), .. high.Select(v => Series(taps, v)!)]);
                }
            }
        }

        return null;
    }

    /// <summary>Volts between neighbouring taps of a half.</summary>
    public IReadOnlyList<double> Sections => [.. Taps.Select((t, k) => k == 0 ? t : t - Taps[k - 1])];

    /// <summary>Volts that the load is spread over at the strap where the copper carries most.</summary>
    public double LeastSpreadVolts => Straps.Min(s => s.InSeries ? s.Volts : 2 * s.Volts);

    private static Strap? Series(double[] taps, double volts)
    {
        var pairs =
            from a in taps
            from b in taps
            where a <= b && Math.Abs(a + b - volts) < 0.5
            orderby b - a
            select new Strap(volts, true, a, b);
        return pairs.FirstOrDefault();
    }

    private static IEnumerable<double[]> Choose(double[] from, int count)
    {
        if (count == 0)
        {
            return
            [
                [],
            ];
        }

        return from.SelectMany((first, k) => Choose(from[(k + 1)..], count - 1).Select(rest => (double[])[first, .. rest]));
    }
}
