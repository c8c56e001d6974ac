namespace Slowglow.Solving;

/// <summary>
/// How the means of a world move with every parameter, from a reference whose supply is in the same condition. Around the rectifiers a
/// world is taken to answer a steady current as the reference does; what else conducts differently changes that answer
/// (the matrix inversion lemma), and every parameter pushes the current that it pushes in this world. One for each thread.
/// </summary>
internal sealed class NearbySpread(Equations equations, IReadOnlyList<SlotChange[]> parameters)
{
    /// <summary>A difference that moves its own net by less than this part is no difference.</summary>
    private const double Negligible = 1e-5;

    /// <summary>Part by which rectified and alternating nets may differ from the reference.</summary>
    private const double SameSupply = 0.15;

    /// <summary>Ripple that always counts as small, as a part of the mean.</summary>
    private const double SmallRipple = 0.02;

    /// <summary>Ripple that has grown to this many times, and beyond <see cref="LoudVolts"/>, comes by another way than in the reference.</summary>
    private const double Grown = 3;
    private const double LoudVolts = 0.02;

    /// <summary>A ripple that specimens move by more than this part of itself is a remainder of larger ones: it does not scale.</summary>
    private const double Remainder = 0.3;

    private readonly int unknowns = equations.Unknowns;
    private readonly MeanEffects effects = new(equations, parameters);
    private readonly double[] difference = new double[equations.Unknowns * equations.Unknowns];

    /// <summary>Takes down what relatives will be compared with.</summary>
    public void Note(CycleReference reference) => reference.Point = effects.At([(reference.Slots, reference.Mean)])[0];

    /// <summary>True when the world's supply stands as the reference's does.</summary>
    public static bool IsNear(Equations equations, CycleProblem problem)
    {
        if (problem.Relative is not { Transfer.Length: > 0 } reference)
        {
            return false;
        }

        var rms = CycleFigures.Rms(problem.Wave, problem.Mean);
        for (var r = 0; r < rms.Length; r++)
        {
            if (rms[r] > LoudVolts && rms[r] > Grown * reference.Rms[r])
            {
                return false;
            }
        }

        foreach (var (element, e) in equations.Elements.Select((x, e) => (x, e)))
        {
            foreach (var r in element.Rows)
            {
                if (r < 0 || !reference.Switching[e])
                {
                    continue;
                }

                var size = Math.Abs(reference.Mean[r]);
                if (
                    Math.Abs(problem.Mean[r] - reference.Mean[r]) > SameSupply * (size + reference.Rms[r])
                    || Math.Abs(rms[r] - reference.Rms[r]) > SameSupply * ((SmallRipple * size) + reference.Rms[r])
                )
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Fills in the spread of up to four worlds with one reference; those whose rectifiers see another circuit are left out.</summary>
    public void Fill(IReadOnlyList<CycleProblem> four)
    {
        var points = effects.At([.. four.Select(p => (p.Slots, p.Mean))]);
        foreach (var (problem, point) in four.Zip(points))
        {
            Fill(problem, point, problem.Relative!);
        }
    }

    private void Fill(CycleProblem problem, MeanPoint point, CycleReference reference)
    {
        Differ(point, reference);
        if (!RectifiersSeeTheSame(reference))
        {
            return;
        }

        var moved = Pushed(point, reference);
        int[] columns = [.. Enumerable.Range(0, unknowns).Where(HasDifference)];
        if (columns.Length > 0)
        {
            Correct(moved, columns, reference);
        }

        problem.MeanSpread = Array.ConvertAll(moved, v => (float)v);
        problem.RmsSpread = Ripples(problem, reference);
    }

    private bool RectifiersSeeTheSame(CycleReference reference)
    {
        for (var e = 0; e < equations.Elements.Count; e++)
        {
            foreach (var r in equations.Elements[e].Rows)
            {
                if (r >= 0 && reference.Switching[e])
                {
                    var at = (r * unknowns) + r;
                    if (Math.Abs(reference.Transfer[at] * difference[at]) > 1)
                    {
                        return false;
                    }
                }
            }
        }

        return true;
    }

    /// <summary>Means as the reference would answer this world's pushes: [parameter * unknowns + unknown].</summary>
    private double[] Pushed(MeanPoint point, CycleReference reference)
    {
        var moved = (double[])reference.MeanSpread.Clone();
        for (var p = 0; p < parameters.Count; p++)
        {
            var target = moved.AsSpan(p * unknowns, unknowns);
            for (var k = effects.Starts[p]; k < effects.Starts[p + 1]; k++)
            {
                var (row, owner) = (effects.Rows[k], effects.Owners[k]);
                var amps = point.Pushed[k] - reference.Point!.Pushed[k];
                if (row >= 0 && amps != 0 && !(owner >= 0 && reference.Switching[owner]))
                {
                    Rows.Add(target, reference.Transfer.AsSpan(row * unknowns, unknowns), amps);
                }
            }
        }

        return moved;
    }

    /// <summary>Lays out by how much this world conducts otherwise than the reference.</summary>
    private void Differ(MeanPoint point, CycleReference reference)
    {
        Array.Clear(difference);
        for (var b = 0; b < equations.Branches.Count; b++)
        {
            var more = point.Siemens[b] - reference.Point!.Siemens[b];
            var branch = equations.Branches[b];
            for (var i = 0; more != 0 && i < branch.Rows.Length; i++)
            {
                for (var j = 0; j < branch.Rows.Length; j++)
                {
                    difference[(branch.Rows[i] * unknowns) + branch.Rows[j]] += branch.Weights[i] * branch.Weights[j] * more;
                }
            }
        }

        for (var e = 0; e < equations.Elements.Count; e++)
        {
            if (!reference.Switching[e])
            {
                DifferElement(e, point.Slopes, reference.Point!.Slopes);
            }
        }
    }

    private void DifferElement(int e, double[] slopes, double[] usual)
    {
        var rows = equations.Elements[e].Rows;
        var ports = rows.Length - 1;
        for (var p = 0; p < ports; p++)
        {
            for (var q = 0; q < ports; q++)
            {
                var at = effects.SlopeOf(e) + (p * ports) + q;
                var more = slopes[at] - usual[at];
                Put(rows[p], rows[q], more);
                Put(rows[p], rows[ports], -more);
                Put(rows[ports], rows[q], -more);
                Put(rows[ports], rows[ports], more);
            }
        }
    }

    private void Put(int row, int column, double value)
    {
        if (row >= 0 && column >= 0)
        {
            difference[(row * unknowns) + column] += value;
        }
    }

    private bool HasDifference(int column)
    {
        for (var r = 0; r < unknowns; r++)
        {
            if (difference[(r * unknowns) + column] != 0)
            {
                return true;
            }
        }

        return false;
    }

    private void Correct(double[] moved, int[] candidates, CycleReference reference)
    {
        var (columns, through) = Through(candidates, reference);
        var c = columns.Length;
        if (c == 0)
        {
            return;
        }

        var matrix = new double[c * c];
        var right = new double[c * parameters.Count];
        for (var i = 0; i < c; i++)
        {
            for (var j = 0; j < c; j++)
            {
                matrix[(i * c) + j] = (i == j ? 1 : 0) + through[(j * unknowns) + columns[i]];
            }

            for (var p = 0; p < parameters.Count; p++)
            {
                right[(i * parameters.Count) + p] = moved[(p * unknowns) + columns[i]];
            }
        }

        if (!DenseSolve.InPlace(matrix, right, c, parameters.Count))
        {
            return;
        }

        for (var p = 0; p < parameters.Count; p++)
        {
            for (var j = 0; j < c; j++)
            {
                var along = right[(j * parameters.Count) + p];
                Rows.Add(moved.AsSpan(p * unknowns, unknowns), through.AsSpan(j * unknowns, unknowns), -along);
            }
        }
    }

    /// <summary>Transfer times difference, column by column, without the columns that change nothing.</summary>
    private (int[] Columns, double[] Through) Through(int[] candidates, CycleReference reference)
    {
        List<int> kept = [];
        var through = new double[candidates.Length * unknowns];
        foreach (var column in candidates)
        {
            var target = through.AsSpan(kept.Count * unknowns, unknowns);
            target.Clear();
            for (var r = 0; r < unknowns; r++)
            {
                var d = difference[(r * unknowns) + column];
                if (d != 0)
                {
                    Rows.Add(target, reference.Transfer.AsSpan(r * unknowns, unknowns), d);
                }
            }

            var largest = 0.0;
            foreach (var t in target)
            {
                largest = Math.Max(largest, Math.Abs(t));
            }

            if (largest > Negligible)
            {
                kept.Add(column);
            }
        }

        return ([.. kept], through);
    }

    /// <summary>Ripple goes with the same parts and in the same proportion as in the reference; a remainder goes by as much.</summary>
    private float[] Ripples(CycleProblem problem, CycleReference reference)
    {
        var rms = CycleFigures.Rms(problem.Wave, problem.Mean);
        var spread = new float[parameters.Count * unknowns];
        for (var r = 0; r < unknowns; r++)
        {
            double square = 0;
            for (var p = 0; p < parameters.Count; p++)
            {
                var s = reference.RmsSpread[(p * unknowns) + r];
                square += s * s;
            }

            var scales = square <= Remainder * Remainder * reference.Rms[r] * reference.Rms[r];
            var share = reference.Rms[r] > 0 && (scales || rms[r] < reference.Rms[r]) ? rms[r] / reference.Rms[r] : 1;
            for (var p = 0; p < parameters.Count; p++)
            {
                var at = (p * unknowns) + r;
                spread[at] = (float)(reference.RmsSpread[at] * share);
            }
        }

        return spread;
    }
}
