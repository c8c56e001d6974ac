using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Reads from columns followed through a settled cycle how means and rms values of the periodic state move.</summary>
internal sealed class CycleSpread(CycleColumns columns, Equations equations)
{
    /// <summary>
    /// For <paramref name="count"/> columns behind those of the states, from <paramref name="first"/>: changes of mean and of rms (mean removed),
    /// [column * unknowns + unknown].
    /// </summary>
    public (double[] Mean, double[] Rms) Of(CycleProblem problem, int lane, int first, int count)
    {
        var n = equations.Unknowns;
        var m = columns.States;
        var (mean, rms) = (new double[count * n], new double[count * n]);
        if (Moved(lane, first, count) is not { } moved)
        {
            return (mean, rms);
        }

        var size = CycleFigures.Rms(problem.Wave, problem.Mean);
        var (means, products) = (Of(columns.Mean, lane, m), Of(columns.Product, lane, m));
        for (var c = 0; c < count; c++)
        {
            var target = mean.AsSpan(c * n, n);
            var product = rms.AsSpan(c * n, n);
            for (var r = 0; r < n; r++)
            {
                target[r] = columns.Mean(m + first + c, r, lane);
                product[r] = columns.Product(m + first + c, r, lane);
            }

            for (var s = 0; s < m; s++)
            {
                var along = moved[(s * count) + c];
                Rows.Add(target, means.AsSpan(s * n, n), along);
                Rows.Add(product, products.AsSpan(s * n, n), along);
            }

            for (var r = 0; r < n; r++)
            {
                product[r] = size[r] > 0 ? (product[r] - (problem.Mean[r] * target[r])) / size[r] : 0;
            }
        }

        return (mean, rms);
    }

    /// <summary>Changes of the watched current's rms as a share of it, for as many columns behind those of the states.</summary>
    public double[] WatchedShare(int lane, int count)
    {
        var share = new double[count];
        var amps = columns.WatchedRms(lane);
        if (amps == 0 || Moved(lane, 0, count) is not { } moved)
        {
            return share;
        }

        var m = columns.States;
        for (var c = 0; c < count; c++)
        {
            share[c] = columns.WatchedChange(m + c, lane) / amps;
            for (var s = 0; s < m; s++)
            {
                share[c] += moved[(s * count) + c] * columns.WatchedChange(s, lane) / amps;
            }
        }

        return share;
    }

    private double[] Of(Func<int, int, int, double> along, int lane, int count)
    {
        var n = equations.Unknowns;
        var values = new double[count * n];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = along(i / n, i % n, lane);
        }

        return values;
    }

    /// <summary>How far the states at the zero crossing move for each column: [state * count + column].</summary>
    private double[]? Moved(int lane, int first, int count)
    {
        var m = columns.States;
        var moved = new double[m * count];
        for (var c = 0; c < count; c++)
        {
            for (var s = 0; s < m; s++)
            {
                moved[(s * count) + c] = columns.End(m + first + c, s, lane);
            }
        }

        return DenseSolve.InPlace(PeriodSearch.PeriodMatrix(columns, lane), moved, m, count) ? moved : null;
    }
}
