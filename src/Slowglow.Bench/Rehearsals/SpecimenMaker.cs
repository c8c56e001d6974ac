using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Makes the unit that is really on the bench: other device laws than the program's, every part somewhere in its tolerance, its own mains.
/// It is solved as it is; the program knows only the drawing.
/// </summary>
internal sealed class SpecimenMaker(Sheet sheet, Random random)
{
    /// <summary>Tolerances are taken as two standard deviations; what lies beyond these is not sold.</summary>
    private const double Furthest = 2.5;

    /// <summary>The unit as it was sold, and as it came in. Null when the wrong part makes it unsolvable.</summary>
    /// <param name="fitted">A part in place of the one of its designator, or on top; null for the unit as drawn.</param>
    public (Worlds Sold, Worlds CameIn)? Make(Part? fitted)
    {
        var real = LawDoubt.Of(sheet, random);
        if (Circuit.From(real).Value is not { } circuit)
        {
            return null;
        }
        var seed = random.Next();
        var sold = new Worlds(Specimen(circuit, seed));
        if (fitted is null)
        {
            return (sold, sold);
        }
        var known = real.Parts.Any(p => p.Designator == fitted.Designator);
        IEnumerable<Part> parts = known
            ? real.Parts.Select(p => p.Designator == fitted.Designator ? fitted : p)
            : [.. real.Parts, fitted];
        var changed = Circuit.From(real with { Parts = [.. parts] }).Value;
        return changed is null ? null : (sold, new Worlds(Specimen(changed, seed)));
    }

    private static Circuit Specimen(Circuit circuit, int seed)
    {
        var draw = new Random(seed);
        return circuit.Specimen([.. circuit.Parameters.Select(_ => Math.Clamp(draw.Normal(), -Furthest, Furthest))]);
    }
}
