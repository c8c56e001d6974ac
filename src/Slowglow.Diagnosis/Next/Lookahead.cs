namespace Slowglow.Diagnosis.Next;

/// <summary>
/// Looks one reading further: for each outcome of the first, which second reading then tells most about the cure for its minutes. Stories' own
/// predictions are not narrowed by the first reading, only their weights.
/// </summary>
internal sealed class Lookahead(IReadOnlyList<Active> active, int cures, double pNone)
{
    /// <summary>Outcomes rarer than this are not followed.</summary>
    private const double TooRare = 0.02;

    /// <summary>A second reading that promises less is not taken.</summary>
    private const double LeastBits = 0.05;

    /// <summary>Cures of the active stories, numbered without gaps; none-of-these is the last.</summary>
    private readonly int[] cureOf = Numbered([.. active.Select(a => a.Cure), cures - 1]);

    /// <summary>A reading that could follow.</summary>
    internal readonly record struct Second(OutcomeTable Table, double Minutes);

    /// <summary>Bits that the second reading is expected to add, and the minutes it is expected to cost.</summary>
    public (double Bits, double Minutes) After(OutcomeTable first, IReadOnlyList<Second> seconds)
    {
        double bits = 0;
        double minutes = 0;
        var weights = new double[active.Count + 1];
        for (var bin = 0; bin < first.Bins; bin++)
        {
            var chance = Weigh(first, bin, weights);
            if (chance < TooRare)
            {
                continue;
            }
            var best = seconds
                .Select(s => (Bits: Bits(s.Table, weights, chance), s.Minutes))
                .Where(s => s.Bits > LeastBits)
                .OrderByDescending(s => s.Bits / s.Minutes)
                .FirstOrDefault();
            bits += chance * best.Bits;
            minutes += chance * best.Minutes;
        }
        return (bits, minutes);
    }

    private static int[] Numbered(int[] sparse)
    {
        int[] known = [.. sparse.Distinct()];
        return [.. sparse.Select(c => Array.IndexOf(known, c))];
    }

    private double Weigh(OutcomeTable first, int bin, double[] weights)
    {
        double sum = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = (i < active.Count ? active[i].Probability : pNone) * first.At(i, bin);
            sum += weights[i];
        }
        return sum;
    }

    /// <summary>Information about the cure, bits, given weights that sum to <paramref name="total"/>.</summary>
    private double Bits(OutcomeTable table, double[] weights, double total)
    {
        var count = cureOf.Max() + 1;
        var joint = new double[count * table.Bins];
        var ofCure = new double[count];
        var ofBin = new double[table.Bins];
        for (var i = 0; i < weights.Length; i++)
        {
            var cure = cureOf[i];
            var weight = weights[i] / total;
            if (weight < 1e-5)
            {
                continue;
            }
            for (var b = 0; b < table.Bins; b++)
            {
                var p = weight * table.At(i, b);
                joint[cure * table.Bins + b] += p;
                ofCure[cure] += p;
                ofBin[b] += p;
            }
        }
        double bits = 0;
        for (var k = 0; k < joint.Length; k++)
        {
            if (joint[k] > 1e-9)
            {
                bits += joint[k] * Math.Log2(joint[k] / (ofCure[k / table.Bins] * ofBin[k % table.Bins]));
            }
        }
        return Math.Max(bits, 0);
    }
}
