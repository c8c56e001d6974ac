using Slowglow.Circuits;
using Slowglow.Sheets;

namespace Slowglow.Diagnosis.Priors;

/// <summary>What the tables' priors become for one unit of known age and history.</summary>
internal sealed class UnitPriors(Sheet sheet, IReadOnlyList<Fault> faults, PriorMasses masses)
{
    private readonly Ageing ageing = new(sheet);
    private readonly double[] table = masses.Of(faults);

    /// <summary>Factor on the table's prior of each fault.</summary>
    public Func<Fault, double> For(Evidence evidence)
    {
        double Aged(Fault f) => ageing.Of(masses.KindOf(f.Part), f.Mode, evidence.AgeYears);
        if (evidence.Past is not { Jobs: > 0 } past)
        {
            return Aged;
        }

        var history = new HistoryShift(past, faults, [.. faults.Zip(table, (f, m) => m * Aged(f))]);
        return f => Aged(f) * history.Of(f);
    }
}
