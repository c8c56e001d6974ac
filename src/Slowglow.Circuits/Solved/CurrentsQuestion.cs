using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Currents that heat what one does not see: in windings, and the ripple in capacitors.</summary>
internal sealed class CurrentsQuestion(AskedWorld asked)
{
    private readonly BranchWave wave = new(asked);

    public IReadOnlyList<WindingCurrent> Windings() =>
        [.. asked.Circuit.Sheet.Parts.OfType<TransformerPart>().SelectMany(Windings)];

    private IEnumerable<WindingCurrent> Windings(TransformerPart part)
    {
        var branches = asked.Parts.BranchesOf(part.Designator).ToList();
        foreach (var winding in part.Windings)
        {
            for (var s = 0; s < winding.SectionVolts.Count; s++)
            {
                var (from, to) = (winding.Pins[s], winding.Pins[s + 1]);
                var amps = SectionAmps(part, from, to, branches);
                if (winding.IsPrimary && !part.IsOutput && amps.Length > 0)
                {
                    // The mains drives no direct current; what stands is the error of the first step of the cycle.
                    var mean = BranchWave.Mean(amps);
                    amps = [.. amps.Select(a => a - mean)];
                }

                yield return new WindingCurrent(
                    part.Designator,
                    winding.Name,
                    from,
                    to,
                    BranchWave.Rms(amps),
                    BranchWave.Mean(amps),
                    winding.RatedAmps > 0 ? winding.RatedAmps : double.NaN,
                    amps.Length == 0 ? 0 : amps.Max(Math.Abs)
                );
            }
        }
    }

    /// <summary>The branch of the transformer with one weight on each of the section's nets; it is taken out of the list.</summary>
    private double[] SectionAmps(TransformerPart part, string from, string to, List<int> branches)
    {
        var (plus, minus) = (Row(part, from), Row(part, to));
        var found = branches.FindIndex(b => IsSection(asked.Circuit.Equations.Branches[b], plus, minus));
        if (found < 0)
        {
            return [];
        }

        var branch = branches[found];
        branches.RemoveAt(found);
        return wave.Amps(branch);
    }

    private int Row(TransformerPart part, string pin) => asked.Circuit.Rows[part.NetOf(pin)!];

    /// <summary>Weights +1 and -1 on its ends, and its turns on the core beside them.</summary>
    private static bool IsSection(Branch branch, int plus, int minus)
    {
        double Weight(int row) => Array.IndexOf(branch.Rows, row) is >= 0 and var k ? branch.Weights[k] : 0;
        var ends = (plus < 0 || Weight(plus) == 1) && (minus < 0 || Weight(minus) == -1);
        return ends && branch.Rows.Length == 1 + (plus < 0 ? 0 : 1) + (minus < 0 ? 0 : 1);
    }

    public IReadOnlyList<CapacitorCurrent> Capacitors() =>
        [.. asked.Circuit.Sheet.Parts.OfType<CapacitorPart>().Select(Capacitor)];

    private CapacitorCurrent Capacitor(CapacitorPart part)
    {
        var own = asked
            .Parts.BranchesOf(part.Designator)
            .Where(b => asked.Circuit.Equations.Branches[b].Kind == BranchKind.Storage);
        return new CapacitorCurrent(part.Designator, own.Sum(b => BranchWave.Rms(wave.Amps(b))));
    }
}
